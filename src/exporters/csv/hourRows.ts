import { labourTasks, rockTimes, type LabourTask } from '../../trade/labour.ts';
import type { DecimalLimits } from '../../units/parseDecimal.ts';

/** A row of a price list that tells of the work instead of a price: what stands in its cells, and what it may say. */
export interface HourRow {
  readonly item: string;
  /** The task that its hours are of; null for how many times as long a hole in rock takes. */
  readonly task: string | null;
  /** Units that it may be in; the first is that of `usual`. `times` turns a number in one into that. */
  readonly units: readonly { readonly name: string; readonly times: number }[];
  /** What is taken where no list says otherwise. */
  readonly usual: number;
  readonly limits: DecimalLimits;
  readonly what: string;
}

/** A hundred feet to a hundred metres. */
const feetInMetres = 0.3048;

const unitsOf: Readonly<Record<LabourTask['per'], HourRow['units']>> = {
  each: [{ name: 'hours each', times: 1 }],
  'hundred feet': [
    { name: 'hours per 100 ft', times: 1 },
    { name: 'hours per 100 m', times: feetInMetres },
  ],
};

/** Limits are ours: no task takes longer, and what is more is a slip. */
const hourLimits: DecimalLimits = { low: 0, high: 1000 };

/** The rows of a price list that tell of the work, in the order in which a list to fill in has them. */
export const hourRows: readonly HourRow[] = [
  ...labourTasks.map(({ id, task, hours, per }) => ({
    item: `hours ${id}`,
    task: id,
    units: unitsOf[per],
    usual: hours,
    limits: hourLimits,
    what: task,
  })),
  {
    item: 'rock',
    task: null,
    units: [{ name: 'times', times: 1 }],
    usual: rockTimes,
    limits: { low: 1, high: 100 },
    what: 'Times as long that a hole in rock takes',
  },
];
