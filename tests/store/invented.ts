import type { Hardware } from '../../src/site/hardware.ts';
import { untoldPart } from '../../src/site/untold.ts';
import { inches } from '../../src/units/inches.ts';

/** An invented hinge by its name, which takes so much. */
export const inventedHinge = (label: string, takes = 2): Hardware => {
  const size = inches(takes);
  return {
    ...untoldPart,
    kind: 'hinge',
    label,
    takes: { low: size, planned: size, high: size },
    from: 'book',
  };
};
