import { describe, expect, it } from 'vitest';
import { shiftText, tieCheckTable, tieTable } from '../../../src/drawing/tables/tieTables.ts';
import { tieTexts } from '../../../src/drawing/tables/tieTexts.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { postTies } from '../../../src/engine/ties/postTies.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';
import { sampleYards } from '../sampleYards.ts';

const lengths = { system: 'feet', fraction: 8 } as const;
const house = addFeature({ ...bare, lengths }, { kind: 'building', label: 'House' }, [
  { x: 0, y: 0 },
  { x: 480, y: 0 },
  { x: 480, y: 360 },
  { x: 0, y: 360 },
]);

const tablesOf = (site: Site) => {
  const layout = layOutSite(site);
  const ties = postTies(site, layout);
  return {
    ties: tieTable(ties, layout, site).rows,
    checks: tieCheckTable(ties, layout, site).rows,
    texts: tieTexts(ties, layout, site),
  };
};

describe('tie tables', () => {
  // A stands 30 ft west of the northwest corner, B 40 ft south of A
  const yard = fence(house, [
    [-360, 360],
    [-360, -120],
  ]);

  it('[D130] a post has two tapes with side and shift, a check, and how it lies off a wall', () => {
    const { ties, checks } = tablesOf(yard);
    // A: 360 to the northwest corner, hypot(360, 360) = 509.117 to the southwest one
    expect(ties[0]).toEqual([
      'A',
      'end',
      'House, NW corner',
      '30\'-0"',
      'House, SW corner',
      '42\'-5 1/8"',
      'right',
      '3/8"',
    ]);
    // B: hypot(360, 480) = 600; it lies off no wall, since it is beyond the corner
    expect(ties[1]?.slice(2, 4)).toEqual(['House, NW corner', '50\'-0"']);
    expect(checks[0]?.slice(3)).toEqual([
      'House, NW corner to SW corner',
      '0"',
      '30\'-0"',
      'right',
    ]);
    expect(checks[1]?.slice(3)).toEqual(['', '', '', '']);
  });

  it('[D130] a shift is never told less than it is', () => {
    expect(shiftText(inches(0.25), lengths)).toBe('1/4"');
    expect(shiftText(inches(0.2501), lengths)).toBe('5/16"');
    expect(shiftText(inches(5 / 25.4), { system: 'mm', fraction: 8 })).toBe('5 mm');
    expect(shiftText(inches(5.1 / 25.4), { system: 'm', fraction: 8 })).toBe('6 mm');
  });

  it('[D130] a post that nothing ties says so, and what would help', () => {
    const { ties, checks, texts } = tablesOf(
      fence({ ...bare, lengths }, [
        [0, 0],
        [400, 0],
      ]),
    );
    expect(ties.map((row) => row[2])).toEqual(['none', 'none']);
    expect(checks).toEqual([]);
    expect(texts.filter((text) => text.startsWith('Post '))).toHaveLength(2);
    expect(texts.at(-1)).toContain('Post B has no tie');
    expect(texts.at(-1)).toContain('draw the corners of a building');
  });

  it('[D131] says what is beyond a tape, sketched, or over falling ground', () => {
    const { texts } = tablesOf(
      fence(house, [
        [-1300, 360],
        [-1300, -120],
      ]),
    );
    expect(texts).toContain('Longer than a tape of 100\'-0": posts A, B.');
    expect(texts.join(' ')).toContain('The plan is as it was sketched');
    const hill = sampleYards.find(({ name }) => name === 'hillside');
    if (hill === undefined) throw new Error('expected the hillside');
    expect(tablesOf(hill.site).texts.join(' ')).toMatch(/hold the tapes level .* posts A, /);
    expect(tablesOf(yard).texts.join(' ')).not.toContain('hold the tapes level');
  });
});
