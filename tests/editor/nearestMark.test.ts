import { expect, it } from 'vitest';
import { nearestMark } from '../../src/editor/nearestMark.ts';
import { yard } from './yard.ts';

it('[E2] the mark nearest to a mark is neither itself nor one that only a tree stands at', () => {
  expect(nearestMark(yard, 'mark:house1')).toEqual({ id: 'mark:house4', away: 240 });
  expect(nearestMark(yard, 'mark:fence3')).toEqual({ id: 'mark:lot2', away: Math.hypot(60, 420) });
  const near = {
    ...yard,
    marks: { ...yard.marks, 'mark:tree1': { x: 840, y: -479, label: '', fixed: false } },
  };
  expect(nearestMark(near, 'mark:fence3')).toEqual({ id: 'mark:lot2', away: Math.hypot(60, 420) });
  expect(nearestMark(yard, 'mark:none')).toBeNull();
});
