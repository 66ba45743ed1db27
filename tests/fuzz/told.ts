import type { Kind } from './seeds.ts';

/** What the process that reads is to do: inputs of a seed from a number on. */
export interface Task {
  readonly seed: number;
  readonly from: number;
  readonly count: number;
}

/** What it tells of one input: that it begins to read it, or what came of it. */
export type Told =
  | { readonly is: 'begun'; readonly input: number; readonly kind: Kind; readonly size: number }
  | {
      readonly is: 'read';
      readonly input: number;
      readonly opened: boolean;
      readonly ms: number;
      readonly megabytes: number;
      readonly fault: string | null;
    };
