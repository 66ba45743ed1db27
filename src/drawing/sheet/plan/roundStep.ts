import { isMetric } from '../../../units/isMetric.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A round length on the ground: inches, and how it is written. */
export interface RoundStep {
  readonly size: number;
  readonly text: string;
}

const foot = 12;
const metre = 1 / 0.0254;

const steps = [0.5, 1, 2, 5].flatMap((own) => [own, own * 10, own * 100, own * 1000]);

const feetText = (count: number): string => (count === 1 ? phrase`1 ft` : phrase`${count} ft`);

/** The smallest of 1, 2 and 5 times ten feet or metres that is at least `least` ground inches. */
export const roundStep = (least: number, system: LengthSystem): RoundStep => {
  const metric = isMetric(system);
  const unit = metric ? metre : foot;
  const rising = steps.toSorted((a, b) => a - b);
  const count = rising.find((step) => step * unit >= least) ?? rising.at(-1) ?? 1;
  return { size: count * unit, text: metric ? `${count} m` : feetText(count) };
};
