import type { Basis } from './countRules.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** One task of the work: how many hours it takes, each or for every hundred feet. */
export interface LabourTask {
  readonly id: string;
  readonly task: string;
  /** What it is counted by: holes that are dug, things that rules count, leaves, or old fence. */
  readonly by: Basis | 'hole' | 'leaf' | 'old fence';
  readonly hours: number;
  readonly per: 'each' | 'hundred feet';
}

/** A start, every hour of it to be changed by the company that knows its crew. */
export const labourSource: Source = {
  text: phrase`hours are ours, a start for a company to change: no published source`,
  status: 'practice',
};

export const labourTasks: readonly LabourTask[] = [
  {
    id: 'tear-out',
    task: phrase`Take out old fence`,
    by: 'old fence',
    hours: 4,
    per: 'hundred feet',
  },
  { id: 'hole', task: phrase`Dig, set and concrete a post`, by: 'hole', hours: 0.5, per: 'each' },
  { id: 'rail', task: phrase`Put up rail`, by: 'rail', hours: 1.5, per: 'hundred feet' },
  { id: 'brace', task: phrase`Brace and truss a terminal`, by: 'brace', hours: 0.3, per: 'each' },
  {
    id: 'fabric',
    task: phrase`Stretch and tie fabric`,
    by: 'fabric',
    hours: 3,
    per: 'hundred feet',
  },
  { id: 'barbed', task: phrase`Barbed wire`, by: 'barbed wire', hours: 0.8, per: 'hundred feet' },
  {
    id: 'boards',
    task: phrase`Rail and board fence`,
    by: 'boards',
    hours: 10,
    per: 'hundred feet',
  },
  { id: 'panel', task: phrase`Hang a panel`, by: 'panel', hours: 0.5, per: 'each' },
  { id: 'leaf', task: phrase`Hang a gate leaf`, by: 'leaf', hours: 1.5, per: 'each' },
];

/** How many times as long a hole in rock takes. */
export const rockTimes = 4;
