import { expect, it } from 'vitest';
import { spareMarks } from '../../src/screens/yard/cards/spareMarks.ts';
import { yard } from '../editor/yard.ts';

it('a mark is offered to be taken out of all that can do without it, by its name', () => {
  expect(spareMarks(yard, 'mark:house2').map(({ name }) => name)).toEqual(['Back fence', 'House']);
  expect(spareMarks(yard, 'mark:fence2').map(({ name }) => name)).toEqual(['Back fence']);
  // a lot line of two marks has none to spare, a tree stands at one
  expect(spareMarks(yard, 'mark:lot1')).toEqual([]);
  expect(spareMarks(yard, 'mark:tree1')).toEqual([]);
});

it('taken out of the one, it stays in the other', () => {
  const [fence, house] = spareMarks(yard, 'mark:house2');
  const bare = fence?.without(yard);
  expect(Object.keys(bare?.lines['line:fence']?.path ?? {})).toHaveLength(2);
  expect(bare?.features).toBe(yard.features);
  const cut = house?.without(yard);
  expect(cut?.lines).toBe(yard.lines);
  expect(cut?.marks['mark:house2']).toEqual(yard.marks['mark:house2']);
});
