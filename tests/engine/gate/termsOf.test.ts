import { untoldLeaf } from '../../../src/site/untold.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import { describe, expect, it } from 'vitest';
import { leavesOf, termsOf } from '../../../src/engine/gate/termsOf.ts';
import type { Gate, Leaf } from '../../../src/site/gate.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

const gateOf = (leaves: 1 | 2, change: Partial<Gate> = {}): Gate => {
  const site = gateOn(
    fence(bare, [
      [0, 0],
      [600, 0],
    ]),
    0,
    { from: 'middle', offset: 0 },
    leaves,
  );
  return { ...Object.values(site.gates)[0]!, ...change };
};

const roles = (gate: Gate): string[] => termsOf(gate, bare).map(({ role }) => role);

const leaf = (order: string, width: number, from: Leaf['from']): Leaf => ({
  order,
  ...untoldLeaf,
  widths: oneWidth(inches(width)),
  from,
  hinge: 'hardware:hinge',
});

describe('termsOf', () => {
  it('[O1] tells what is met along the leg: hinge, leaf, latch, as the gate is hung', () => {
    expect(roles(gateOf(1))).toEqual(['hinge', 'leaf', 'latch']);
    expect(roles(gateOf(1, { hingedAt: 'end' }))).toEqual(['latch', 'leaf', 'hinge']);
    expect(roles(gateOf(2))).toEqual(['hinge', 'leaf', 'latch', 'leaf', 'hinge']);
  });

  it('[O1] every leaf counts with its own width, the one nearer to the start first', () => {
    const gate = gateOf(2, {
      leaves: { 'leaf:b': leaf('a0', 56.75, 'measured'), 'leaf:a': leaf('a1', 57, 'copied') },
    });
    expect(leavesOf(gate).map(({ id }) => id)).toEqual(['leaf:b', 'leaf:a']);
    const leaves = termsOf(gate, bare).filter(({ role }) => role === 'leaf');
    expect(leaves.map(({ label, planned }) => [label, planned])).toEqual([
      ['Leaf 1', 56.75],
      ['Leaf 2', 57],
    ]);
  });

  it('[O1] every term says where its figure comes from', () => {
    const gate = gateOf(2, {
      leaves: { 'leaf:a': leaf('a0', 56, 'copied'), 'leaf:b': leaf('a1', 56, 'catalogue') },
    });
    const sources = termsOf(gate, bare).map(({ source }) => source);
    expect(sources[1]).toMatch(/copied.*measure/);
    expect(sources[3]).toMatch(/catalogue.*measure/);
    expect(sources.filter((source) => source.length === 0)).toEqual([]);
  });

  it('says in one line which part is not there', () => {
    const gate = gateOf(1, { latch: 'hardware:none' });
    expect(() => termsOf(gate, bare)).toThrow('hardware hardware:none: expected it in the site');
  });
});
