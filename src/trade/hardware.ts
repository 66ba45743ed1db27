import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * What a part takes up, in inches, before anybody has measured the one on order. No standard says
 * what to deduct; a plan made with these is to be settled by measuring.
 */
export interface AssumedHardware {
  readonly kind: 'hinge' | 'latch' | 'drop rod' | 'closer';
  readonly label: string;
  /**
   * Hinge: post face to frame. Latch and drop rod: smallest and largest gap at which it catches.
   * Closer: nothing.
   */
  readonly takes: { readonly low: Inches; readonly planned: Inches; readonly high: Inches };
  /** `adjustable`: it can be set anywhere from low to high; else it lies somewhere between. */
  readonly spread: 'uncertain' | 'adjustable';
  readonly source: Source;
}

const takes = (low: number, planned: number, high: number): AssumedHardware['takes'] => ({
  low: inches(low),
  planned: inches(planned),
  high: inches(high),
});

const practice = (text: string): Source => ({
  text: phrase`${text}: common practice, no published source`,
  status: 'practice',
});

const memory = (text: string): Source => ({ text: phrase`${text}, from memory`, status: 'memory' });

/** Planned at its largest: an opening too narrow cannot be mended, a little wide is caught up. */
export const residentialHinge: AssumedHardware = {
  kind: 'hinge',
  label: phrase`Male and female hinge, residential`,
  takes: takes(1.625, 1.875, 1.875),
  spread: 'uncertain',
  source: practice(phrase`1-5/8 to 1-7/8 in for each hinge`),
};

/** For wide and heavy leaves: 180 degree, bulldog or strap hinges. */
export const heavyHinge: AssumedHardware = {
  kind: 'hinge',
  label: phrase`Heavy hinge, 180 degree or strap`,
  takes: takes(2, 2.5, 2.5),
  spread: 'uncertain',
  source: memory(phrase`2 to 2-1/2 in for each hinge`),
};

/**
 * From a leaf 3-1/2 to 4 in under its opening, less the hinge. Planned so that a residential hinge
 * that takes less than its most still leaves a gap that the latch catches.
 */
export const forkLatch: AssumedHardware = {
  kind: 'latch',
  label: phrase`Fork latch`,
  takes: takes(1.75, 1.875, 2.125),
  spread: 'uncertain',
  source: practice(phrase`about 2 in at the latch, 1-3/4 to 2-1/8 from leaf and hinge`),
};

/**
 * Between the two frames of a double gate. Planned at its smallest: two residential hinges are
 * planned at their largest, and whatever they take less widens the gap, by 1/2 in at most.
 */
export const dropRod: AssumedHardware = {
  kind: 'drop rod',
  label: phrase`Drop rod latch`,
  takes: takes(2.5, 2.5, 3),
  spread: 'uncertain',
  source: practice(phrase`2-1/2 to 3 in between the leaves`),
};

const uncertain = 'uncertain';

/** Other kinds of hinge, each to be measured before a plan relies on it. */
const otherHinges: readonly AssumedHardware[] = [
  {
    kind: 'hinge',
    label: phrase`Bulldog hinge`,
    takes: takes(2, 2.5, 2.5),
    spread: uncertain,
    source: memory(phrase`2 to 2-1/2 in for each commercial hinge`),
  },
  {
    kind: 'hinge',
    label: phrase`Threaded male hinge, adjustable`,
    takes: takes(1.5, 1.875, 2.25),
    spread: 'adjustable',
    source: memory(phrase`set by its nuts to 1-1/2 to 2-1/4 in`),
  },
];

/** Other latches, for one leaf and for two. */
const otherLatches: readonly AssumedHardware[] = [
  {
    kind: 'latch',
    label: phrase`Heavy latch`,
    takes: takes(1.5, 1.75, 2),
    spread: uncertain,
    source: memory(phrase`heavy latches 1-1/2 to 2 in`),
  },
  {
    kind: 'latch',
    label: phrase`Latch of a leaf that rolls`,
    takes: takes(1, 1.5, 2),
    spread: uncertain,
    source: memory(phrase`1 to 2 in between the nose of the leaf and its post`),
  },
  {
    kind: 'drop rod',
    label: phrase`Drop rod with a fork`,
    takes: takes(1.75, 2, 2.5),
    spread: uncertain,
    source: practice(phrase`planned at 2 in, a fork catches up to 2-1/2`),
  },
];

/** A closer stands beside the hinges: between post and leaf it takes up nothing. */
const closer = (label: string): AssumedHardware => ({
  kind: 'closer',
  label,
  takes: takes(0, 0, 0),
  spread: uncertain,
  source: memory(phrase`stands beside the hinges and takes up no width`),
});

/** Everything that can be assumed, in the order in which it is offered. */
export const assumedHardware: readonly AssumedHardware[] = [
  residentialHinge,
  heavyHinge,
  ...otherHinges,
  forkLatch,
  dropRod,
  ...otherLatches,
  closer(phrase`Spring closer`),
  closer(phrase`Hydraulic closer`),
];
