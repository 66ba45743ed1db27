import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import { GradeFields } from '../../../../src/screens/yard/cards/GradeFields.tsx';
import { ShotCard } from '../../../../src/screens/yard/cards/ShotCard.tsx';
import { addShots } from '../../../../src/site/edits/addShots.ts';
import { setLegGrade } from '../../../../src/site/edits/setLegGrade.ts';
import type { LineId, ShotId } from '../../../../src/site/ids.ts';
import type { Site } from '../../../../src/site/site.ts';
import { inches } from '../../../../src/units/inches.ts';
import { bare, fence } from '../../../engine/plainYard.ts';
import { shown } from '../shown.tsx';

const run = fence(bare, [
  [0, 0],
  [600, 0],
]);

const shot = (x: number, y: number, z: number) => ({ x, y, z: inches(z), label: 'P1' });

/** The ground rises by a tenth to the east. */
const sloped = addShots(run, [
  shot(-60, -60, -6),
  shot(660, -60, 66),
  shot(660, 60, 66),
  shot(-60, 60, -6),
]);

const fields = (site: Site): string => {
  const [line] = Object.keys(site.lines) as LineId[];
  const leg = line === undefined ? undefined : layOutSite(site).lines[line]?.legs[0];
  if (line === undefined || leg === undefined) throw new Error('expected a leg');
  return shown(site, <GradeFields line={line} leg={leg} />);
};

describe('ShotCard', () => {
  it('shows height, name and place of a shot, and nothing for one that is gone', () => {
    const [id] = Object.keys(sloped.shots) as ShotId[];
    const card = shown(sloped, <ShotCard id={id ?? 'shot:none'} />);
    const said = ['-6"', 'P1', `-5'-0"`].map((text) =>
      text.replaceAll('"', '&quot;').replaceAll("'", '&#x27;'),
    );
    for (const text of said) expect(card).toContain(`value="${text}"`);
    expect(shown(sloped, <ShotCard id="shot:none" />)).toBe('');
  });
});

describe('GradeFields', () => {
  it('tells how the ground under a leg rises, and how steep it is at most', () => {
    expect(fields(sloped)).toMatch(
      /Rises 5&#x27;-0&quot; from its start to its end; steepest 10 % up\./,
    );
  });

  it('says where the shots do not reach, and nothing of ground without shots', () => {
    const far = addShots(run, [shot(0, 900, 0), shot(600, 900, 0), shot(300, 960, 0)]);
    expect(fields(far)).toContain('The shots do not reach this leg');
    expect(fields(run)).not.toMatch(/Rises|Falls|shots/);
  });

  it('has chosen whether the fabric follows or steps', () => {
    const [line] = Object.keys(sloped.lines) as LineId[];
    const leg = line === undefined ? undefined : layOutSite(sloped).lines[line]?.legs[0]?.id;
    if (line === undefined || leg === undefined) throw new Error('expected a leg');
    expect(fields(sloped)).toMatch(/value="follow" selected=""/);
    expect(fields(setLegGrade(sloped, line, leg, 'step'))).toMatch(/value="step" selected=""/);
  });
});
