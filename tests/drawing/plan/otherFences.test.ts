import { describe, expect, it } from 'vitest';
import { fenceOutline } from '../../../src/drawing/explode/fenceOutline.ts';
import { infillOn } from '../../../src/drawing/plan/infillOn.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { legend } from '../../../src/drawing/sheet/plan/legend.ts';
import { specTexts } from '../../../src/drawing/tables/specTexts.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { usualBoards } from '../../../src/engine/usualBoards.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { setLineSpec } from '../../../src/site/edits/setLineSpec.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';
import { textsOf } from '../textsOf.ts';

const { id, spec } = usualBoards(inches(72));
const drawn = fence(
  fence(bare, [
    [0, 0],
    [480, 0],
  ]),
  [
    [0, 900],
    [480, 900],
  ],
);
const site = setLineSpec(addSpec(drawn, id, spec), 'line:2', id);

describe('fence that is no chain link, drawn', () => {
  it('[D110] each kind has a sign of its own between its dashes', () => {
    const ends = [
      { x: 0, y: 0 },
      { x: 2, y: 0 },
    ];
    const looks = (['chain link', 'boards', 'panels'] as const).map((of) =>
      JSON.stringify(fenceOutline(ends as never, false, { of, window: null })),
    );
    expect(new Set(looks).size).toBe(3);
    const kinds = drawPlan(site, layOutSite(site)).flatMap((one) =>
      one.kind === 'fence' ? [one.of] : [],
    );
    expect(kinds).toEqual(['chain link', 'boards']);
    expect(infillOn(site, 'line:9')).toBe('chain link');
  });

  it('[D110] the key and the words of the sheet name what is there', () => {
    expect(specTexts(site).join('\n')).toMatch(/boards 6'-0" high/);
    const said = textsOf(legend(site, layOutSite(site), 10, null).atoms)
      .map(({ text }) => text)
      .join(' ');
    expect(said).toMatch(/chain-link fence/);
    expect(said).toMatch(/fence of boards on rails/);
    expect(said).not.toMatch(/panels/);
  });
});
