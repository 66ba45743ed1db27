import { englishOf } from '../../phrases/phrase.ts';
import type { PartPlan } from '../../store/plans.ts';
import { untoldPart } from '../../site/untold.ts';
import type { AssumedHardware } from '../../trade/hardware.ts';

const slug = (label: string): string =>
  label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40);

/** A part that can be assumed before anybody has measured one, as a site or a book would carry it. */
export const assumedPart = (part: AssumedHardware): PartPlan => {
  const { kind, label, takes, spread, source } = part;
  const told = { kind, label, takes, spread, from: 'assumed', remark: source.text } as const;
  return { id: `hardware:${slug(englishOf(label))}`, hardware: { ...untoldPart, ...told } };
};
