import { describe, expect, it } from 'vitest';
import type { Hardware } from '../../src/site/hardware.ts';
import { measuredPart } from '../../src/site/measuredPart.ts';
import { untoldPart } from '../../src/site/untold.ts';
import { inches } from '../../src/units/inches.ts';

const takes = { low: inches(1.75), planned: inches(1.875), high: inches(2.125) };
const part = (kind: Hardware['kind']): Hardware => ({
  ...untoldPart,
  kind,
  label: 'Invented',
  takes,
  from: 'assumed',
});
const read = (...lengths: number[]) => lengths.map(inches);

describe('measuredPart', () => {
  it('plans a hinge at the largest that was read', () => {
    // 1-3/4, 1-7/8 and 2 in read off three sets, planned at 2: common practice, no published source
    expect(measuredPart(part('hinge'), read(2, 1.75, 1.875), '2026-03-09')).toEqual({
      ...part('hinge'),
      takes: { low: 1.75, planned: 2, high: 2 },
      readings: [1.75, 1.875, 2],
      from: 'measured',
      on: '2026-03-09',
    });
  });

  it.each([
    [[1.5, 2.5], 1.875],
    [[2, 2.5], 2],
    [[1.5, 1.625], 1.625],
  ])('keeps the planned gap of a latch as near as %j allows', (readings, planned) => {
    expect(measuredPart(part('latch'), read(...readings), '')?.takes.planned).toBe(planned);
    expect(measuredPart(part('drop rod'), read(...readings), '')?.takes.planned).toBe(planned);
  });

  it('leaves the part and its list as they were, and says nothing of no reading', () => {
    const readings = Object.freeze(read(2, 1.75));
    const hinge = Object.freeze(part('hinge'));
    measuredPart(hinge, readings, '');
    expect(readings).toEqual([2, 1.75]);
    expect(measuredPart(hinge, [], '')).toBeNull();
  });
});
