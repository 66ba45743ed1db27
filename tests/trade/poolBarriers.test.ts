import { expect, it } from 'vitest';
import { poolGaps, poolHeight, poolLatch, poolMeshes } from '../../src/trade/poolBarriers.ts';

it('[T23] both published limits of mesh and of the gap stand side by side, strict first', () => {
  // CPSC Publication 362: 1 1/4 in, latch 54 in; ISPSC 305.2 1 3/4 in and IRC AG105.2(6) 2 1/4 in, from memory
  expect(poolMeshes.map(({ limit, source }) => [limit, source.status])).toEqual([
    [1.25, 'published'],
    [1.75, 'memory'],
    [2.25, 'memory'],
  ]);
  // IRC-type 2 in, CPSC 4 in; CPSC 48 in high
  expect(poolGaps.map(({ limit }) => limit)).toEqual([2, 4]);
  expect([poolHeight.limit, poolLatch.limit]).toEqual([48, 54]);
});
