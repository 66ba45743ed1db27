import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** One published limit of a barrier round a pool, inches. */
export interface PoolLimit {
  readonly limit: Inches;
  readonly source: Source;
}

const published = (limit: number, text: string): PoolLimit => ({
  limit: inches(limit),
  source: { text, status: 'published' },
});
const remembered = (limit: number, text: string): PoolLimit => ({
  limit: inches(limit),
  source: { text: phrase`${text}; from memory`, status: 'memory' },
});

const cpsc = phrase`CPSC pool barrier guidelines, reprint`;

/** The least height, on the side away from the pool. */
export const poolHeight = published(48, cpsc);

/** The most below the fabric, from strict to mild: they disagree. */
export const poolGaps: readonly PoolLimit[] = [
  published(2, phrase`IRC AG105.2 text, over grass or gravel`),
  published(4, cpsc),
];

/** The widest mesh of chain link that nothing closes, from strict to mild: they disagree. */
export const poolMeshes: readonly PoolLimit[] = [
  published(1.25, 'CPSC Publication 362'),
  remembered(1.75, 'ISPSC 305.2'),
  remembered(2.25, 'IRC AG105.2(6)'),
];

/** Rails nearer to each other than this are a ladder: they belong on the pool's side. */
export const poolRails = published(
  45,
  phrase`Fairfax MN 211-1 and Rutherford County TN, as many codes have it`,
);

/** What slats may leave open in a wider mesh. */
export const poolSlats = published(1.75, 'CPSC Publication 362');

/** A latch lower than this over the bottom of its gate has to be out of reach from outside. */
export const poolLatch = published(54, 'CPSC Publication 362');

/** No opening wider than so within so far of such a latch, inches: CPSC Publication 362. */
export const poolLatchRoom = { opening: inches(1 / 2), within: inches(18) } as const;

/** How far below the top of the gate such a latch is, on the pool's side. */
export const poolLatchBelowTop = inches(3);

/** The rule of gates: away from the pool, closing and latching by themselves. */
export const poolGates: Source = {
  text: phrase`CPSC Publication 362: gates open away from the pool, close and latch by themselves`,
  status: 'published',
};
