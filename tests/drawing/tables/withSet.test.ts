import { expect, it } from 'vitest';
import { openingTable } from '../../../src/drawing/tables/openingTable.ts';
import { withSet } from '../../../src/drawing/tables/withSet.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { AsSet } from '../../../src/site/asSet.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { found, onlyGate } from '../../engine/set/setYard.ts';
import { swing, wayYard } from '../../engine/wayYard.ts';

const yard = wayYard(swing);
const scheduled = (asSet: AsSet | null) => {
  const site = { ...yard, gates: { [firstGate(yard)]: { ...onlyGate(yard), asSet } } };
  const layout = layOutSite(site);
  const table = openingTable(layout, site);
  return { table, told: withSet(table, Object.values(layout.gates), site) };
};

it('[D63] the schedule has a column of what was set where any gate was, and else none', () => {
  const bare = scheduled(null);
  expect(bare.told).toBe(bare.table);
  const { told, table } = scheduled(found(48, 47.75));
  expect(told.columns.at(-1)?.heading).toBe('As set');
  expect(told.rows).toEqual(table.rows.map((row) => [...row, `4'-0" top, 3'-11 3/4" bottom`]));
  expect(scheduled(found(48, null)).told.rows[0]?.at(-1)).toBe(`4'-0" top`);
});
