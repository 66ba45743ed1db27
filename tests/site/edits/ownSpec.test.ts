import { describe, expect, it } from 'vitest';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { ownSpec } from '../../../src/site/edits/ownSpec.ts';
import type { LineId } from '../../../src/site/ids.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';

const two = fence(
  fence(bare, [
    [0, 0],
    [300, 0],
  ]),
  [
    [0, 500],
    [300, 500],
  ],
);
const [first, second] = Object.keys(two.lines) as LineId[];

describe('ownSpec', () => {
  it('[S77] a line gets a copy of its build, and what changes in it stays there', () => {
    const site = ownSpec(two, second!);
    const own = site.lines[second!]!.spec;
    expect(own).not.toBe('spec:six');
    expect(site.lines[first!]!.spec).toBe('spec:six');
    expect(site.specs[own]).toEqual({ ...two.specs['spec:six'], label: '6 ft 2' });
    const high = changeSpec(site, own, { fabricHeight: inches(96) });
    expect(high.specs['spec:six']!.fabricHeight).toBe(72);
  });

  it('[S77] a copy of a copy is the next of its name, and an unknown line is refused', () => {
    const thrice = ownSpec(ownSpec(two, second!), second!);
    expect(thrice.specs[thrice.lines[second!]!.spec]!.label).toBe('6 ft 3');
    expect(() => ownSpec(two, 'line:9')).toThrow('lines: expected a fence line of this site');
  });

  it('[S77] a copy of a name as long as may be has one too', () => {
    const long = changeSpec(two, 'spec:six', { label: 'x'.repeat(200) });
    const site = ownSpec(long, second!);
    expect(site.specs[site.lines[second!]!.spec]!.label).toBe(`${'x'.repeat(190)} 2`);
  });
});
