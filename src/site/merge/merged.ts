import { kept } from '../kept.ts';
import type { Site } from '../site.ts';
import { aligned, type Aligned } from './aligned.ts';
import type { Pick } from './clash.ts';
import { combined } from './combined.ts';
import { conflictOf, type Conflict } from './conflict.ts';

/** Whose value of a conflict is taken: of the drawing that is here, or of the copy that came. */
export type Side = 'mine' | 'theirs';

/** The sides that were chosen, by the ids of conflicts. */
export type Choices = ReadonlyMap<string, Side>;

/** Two copies of one document as one. */
export interface Merge {
  /** What they were merged from, told alike: one id means one thing in all of them. */
  readonly copies: Aligned;
  readonly mine: Site;
  readonly theirs: Site;
  /** Everything that either copy added or changed; of what is in conflict, what mine has. */
  readonly site: Site;
  readonly conflicts: readonly Conflict[];
}

const pickBy =
  ({ firstIs }: Aligned, choices: Choices): Pick =>
  (id) =>
    (choices.get(id) ?? 'mine') === firstIs ? 'first' : 'second';

/**
 * Two copies of one document, changed apart, as one. What only one of them changed is as that one has it; what
 * both changed to different values, or one took out and the other changed, is a conflict, and none of it is
 * lost. `base` is what both came from; where nobody knows it, everything that either has is kept, and every
 * difference in the same field is a conflict. The site opens, whatever the copies are; two that make no
 * document together are one conflict, of which mine stands.
 */
export const merged = (base: Site | null, mine: Site, theirs: Site): Merge => {
  const copies = aligned(base, mine, theirs);
  const { site, clashes } = combined(copies, pickBy(copies, new Map()));
  const { first, second, firstIs } = copies;
  const [own, other] = firstIs === 'mine' ? [first, second] : [second, first];
  const named = { base: copies.base, mine: own, theirs: other, firstIs };
  return {
    copies,
    mine: own,
    theirs: other,
    site: kept(mine, site),
    conflicts: clashes.map((clash) => conflictOf(clash, named)),
  };
};

/**
 * The site of a merge with the sides taken that were chosen; of a conflict that nobody chose for, what mine
 * has. It opens, whatever was chosen.
 */
export const settled = ({ copies, site }: Merge, choices: Choices): Site =>
  kept(site, combined(copies, pickBy(copies, choices)).site);
