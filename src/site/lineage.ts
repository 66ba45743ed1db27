import { z } from './z.ts';
import type { Frozen } from './frozen.ts';
import { phrase } from '../phrases/phrase.ts';

/** Saves of which a document remembers the digest. Ours: a month of daily sending, in 3 kB. */
export const mostSaves = 32;

/**
 * Where a document comes from, so that two copies of it find what both came from. It is no part of what is
 * drawn: no check value and no digest rests on it.
 */
export const lineageSchema = z.strictObject({
  /** Given to a job once, at its birth or when it is first saved; null where it never was. */
  job: z
    .string()
    .regex(/^[0-9a-f]{32}$/)
    .nullable(),
  /** The documents that this one was, by digest; the larger the number, the later. */
  saves: z
    .record(z.string().regex(/^[0-9a-f]{64}$/), z.int().min(1).max(1_000_000_000))
    .refine((saves) => Object.keys(saves).length <= mostSaves, phrase`at most ${mostSaves} saves`),
});

export type Lineage = Frozen<z.infer<typeof lineageSchema>>;

/** That of a document that was never saved. */
export const newLineage: Lineage = { job: null, saves: {} };

/** The latest of some saves, as many as a document remembers; of two of one number the one that sorts later. */
const latest = (saves: readonly (readonly [string, number])[]): Lineage['saves'] =>
  Object.fromEntries(
    saves
      .toSorted(([one, a], [other, b]) => b - a || (one < other ? 1 : -1))
      .slice(0, mostSaves)
      .toSorted(([one], [other]) => (one < other ? -1 : 1)),
  );

/**
 * A lineage with one more save of the job, as its latest; `job` is given to one that has none. The same lineage
 * when it knows that save already, so that saving twice adds nothing.
 */
export const withSave = (lineage: Lineage, digest: string, job: string): Lineage => {
  if (lineage.job !== null && Object.hasOwn(lineage.saves, digest)) return lineage;
  const last = Math.max(0, ...Object.values(lineage.saves));
  return {
    job: lineage.job ?? job,
    saves: latest([...Object.entries(lineage.saves), [digest, last + 1]]),
  };
};

/**
 * A lineage as it was when one of its saves was made, so that the file of a document says the same whatever was
 * saved of the job since.
 */
export const lineageAt = ({ job, saves }: Lineage, digest: string): Lineage => {
  const last = saves[digest] ?? 0;
  return { job, saves: latest(Object.entries(saves).filter(([, number]) => number <= last)) };
};

/** The lineage of what was merged of two documents: all that either was. */
export const joinedLineage = (one: Lineage, other: Lineage): Lineage => {
  const both = [...Object.keys(one.saves), ...Object.keys(other.saves)].map(
    (digest) => [digest, Math.max(one.saves[digest] ?? 0, other.saves[digest] ?? 0)] as const,
  );
  const jobs = [one.job, other.job].filter((job) => job !== null).toSorted();
  return { job: jobs[0] ?? null, saves: latest([...new Map(both)]) };
};
