import type { Inches } from '../../units/inches.ts';

/** The ways to make a gate hang between posts that stand as they were set, the least work first. */
export const remedyKinds = [
  'measure',
  'adjust',
  'other hinge',
  'turn hinges',
  'other latch',
  'trim',
  'shim',
  'reset',
] as const;

/** One way to make a gate hang, and how far it reaches. */
export interface Remedy {
  readonly kind: (typeof remedyKinds)[number];
  /** What to do, in one sentence, with the lengths in the site's style. */
  readonly what: string;
  /** How much it can take up, inches; `unlimited` where only the work sets an end. */
  readonly takesUp: Inches | 'unlimited';
  /** Whether with it alone the gate hangs at every width that was measured, whatever is unsure. */
  readonly enough: boolean;
  readonly working: string;
  /** The post to be set again, by the end of the leg that it is nearer to; null for the others. */
  readonly post: 'start' | 'end' | null;
}
