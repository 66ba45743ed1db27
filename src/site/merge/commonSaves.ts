import type { Site } from '../site.ts';

/** A document and its digest. */
export interface Digested {
  readonly site: Site;
  readonly digest: string;
}

/** Everything that a document was, with itself as the latest. */
const savesOf = ({ site, digest }: Digested): ReadonlyMap<string, number> =>
  new Map([...Object.entries(site.lineage.saves), [digest, Number.POSITIVE_INFINITY]]);

/**
 * The digests of documents that both copies were, the latest first: each of them is a document that both came
 * from. A copy that the other one came from is among them.
 */
export const commonSaves = (mine: Digested, theirs: Digested): readonly string[] => {
  const [own, other] = [savesOf(mine), savesOf(theirs)];
  const late = (digest: string): number => Math.min(own.get(digest) ?? 0, other.get(digest) ?? 0);
  return [...own.keys()]
    .filter((digest) => other.has(digest))
    .toSorted((a, b) => (late(a) === late(b) ? (a < b ? -1 : 1) : late(b) - late(a)));
};
