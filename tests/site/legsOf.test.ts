import { expect, it } from 'vitest';
import { legsOf } from '../../src/site/legsOf.ts';
import { sampleDocument } from './sampleSite.ts';

const ids = (legs: ReturnType<typeof legsOf>) => legs.map((leg) => [leg.id, leg.next]);

it('an open line has one leg fewer than marks, a closed one as many', () => {
  expect(ids(legsOf(sampleDocument.lines['line:1']))).toEqual([
    ['vertex:1', 'vertex:2'],
    ['vertex:2', 'vertex:3'],
    ['vertex:3', 'vertex:4'],
  ]);
  expect(legsOf(sampleDocument.lines['line:2'])).toEqual([
    { id: 'vertex:5', next: 'vertex:6', start: 'mark:7', end: 'mark:8' },
    { id: 'vertex:6', next: 'vertex:7', start: 'mark:8', end: 'mark:9' },
    { id: 'vertex:7', next: 'vertex:5', start: 'mark:9', end: 'mark:7' },
  ]);
});

it('[S6] fewer than two marks have no leg', () => {
  const path = { 'vertex:1': { mark: 'mark:1', order: 'a0' } } as const;
  expect(legsOf({ path: {}, closed: true })).toEqual([]);
  expect(legsOf({ path, closed: true })).toEqual([]);
});
