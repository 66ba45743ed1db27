import { describe, expect, it } from 'vitest';
import { structureTable } from '../../../src/drawing/tables/structureTable.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { setConditions } from '../../../src/site/edits/setConditions.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';

const site = fence(bare, [
  [0, 0],
  [1200, 0],
]);

describe('the table of structure', () => {
  it('[D82] has no rows where nobody has told of wind or frost', () => {
    expect(structureTable(site, layOutSite(site)).rows).toEqual([]);
  });

  it('[D82] says what is planned, what it was compared with and by which rule', () => {
    const told = setConditions(site, {
      wind: { speed: 115, exposure: 'C' },
      frost: inches(36),
      soil: 'sand',
    });
    const { rows } = structureTable(told, layOutSite(told));
    expect(rows.map(([build, planned]) => [build, planned])).toEqual([
      ['6 ft: line post 1', `bays to 10'-0"`],
      ['', `hole 2'-6" deep`],
      ['', `hole 2'-6" deep`],
      ['', `hole 2'-6" deep`],
      ['6 ft: terminal post A', `holds 5'-0"`],
      ['', `hole 2'-6" deep`],
      ['', `hole 2'-6" deep`],
      ['', `hole 2'-6" deep`],
    ]);
    const compared = rows.map(([, , text]) => text);
    expect(compared[0]).toMatch(
      /^115 mph, exposure C, 13 % solid: \d+ lb at \d'-.*, \d+ ft-lb of \d+ ft-lb/,
    );
    expect(compared.slice(1, 4)).toEqual([
      `hole: 2'-6" deep`,
      `frost: 3'-6" deep`,
      expect.stringMatching(/^pole in 150 psf a foot: \d'-/),
    ]);
    expect(rows.every(([, , , by]) => by !== '')).toBe(true);
  });
});
