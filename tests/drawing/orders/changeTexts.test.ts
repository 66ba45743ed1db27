import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeTexts } from '../../../src/drawing/orders/changeTexts.ts';
import { changesBetween } from '../../../src/engine/sign/standing.ts';
import type { Rested } from '../../../src/engine/sign/restsOn.ts';
import type { LengthStyle } from '../../../src/units/lengthStyle.ts';

const feet: LengthStyle = { system: 'feet', fraction: 8 };

const told = (signed: Rested, now: Rested, style = feet) =>
  changeTexts(changesBetween(signed, now), { signed, now, style });

describe('changeTexts', () => {
  it('[D45] says from what to what and by how much, leaves by their names', () => {
    const was = {
      'opening to hold': 118.5,
      'leaf:7, hinge': 'Strap',
      'leaf:7, hinge, planned': 2,
      'leaf:9, opens to': 'left',
      'leaf:9, post OD': 2.875,
    };
    const now = {
      'opening to hold': 118.25,
      'leaf:7, hinge': 'Bulldog',
      'leaf:7, hinge, planned': 1.75,
      'leaf:9, opens to': 'right',
      'leaf:9, post OD': 4,
    };
    expect(told(was, now)).toEqual([
      'Opening to hold: from 9\'-10 1/2" to 9\'-10 1/4", 1/4" less.',
      'Leaf 1, hinge: from “Strap” to “Bulldog”.',
      'Leaf 1, hinge, planned: from 2" to 1 3/4", 1/4" less.',
      'Leaf 2, opens to: from left to right.',
      'Leaf 2, post OD: from 2.875" to 4.000", 1.125" more.',
    ]);
  });

  it('[D45] calls a lone leaf Leaf, and says what nobody had said', () => {
    const was = { 'leaf:1, height': 'not said', latch: 'Fork' };
    expect(told(was, { 'leaf:1, height': 48, latch: 'Fork' })).toEqual([
      'Leaf, height: from not said to 4\'-0".',
    ]);
  });

  it('[D45] tells a leaf that came or went in one sentence', () => {
    const one = { 'leaf:1, width at the top': 44, 'leaf:1, opens to': 'left' };
    const two = { ...one, 'leaf:2, width at the top': 44, 'leaf:2, opens to': 'right' };
    expect(told(one, two)).toEqual(['Leaf 2 was not there when it was signed.']);
    expect(told(two, one)).toEqual(['Leaf 2 that was signed is there no more.']);
  });

  it('[D45] writes sizes off the marks of the tape finer, and metric in millimetres', () => {
    const [was, now] = [
      { latch: 'Rod', 'latch, high': 1.8125 },
      { latch: 'Rod', 'latch, high': 2 },
    ];
    expect(told(was, now)).toEqual(['Latch, high: from 1 13/16" to 2", 3/16" more.']);
    expect(told(was, now, { system: 'm', fraction: 8 })).toEqual([
      'Latch, high: from 46 mm to 51 mm, 5 mm more.',
    ]);
  });

  it('[D45] lengths that differ never read the same', () => {
    const system = fc.constantFrom('feet', 'inches', 'decimal feet', 'mm', 'm');
    const change = fc.double({ min: 0.002, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 400, noNaN: true }), change, system, (was, by, own) => {
        const style = { system: own, fraction: 8 } as const;
        const [text = ''] = told({ way: was }, { way: was + by }, style);
        const [, from, to] = /from (.+) to (.+), /.exec(text) ?? [];
        expect(from).toBeDefined();
        expect(from).not.toBe(to);
      }),
    );
  });
});
