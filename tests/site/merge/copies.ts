import fc from 'fast-check';
import type { Site } from '../../../src/site/site.ts';
import { randomSite } from '../../engine/randomSite.ts';
import { after, anyMove, verbs, type Move } from '../edits/anyEdits.ts';
import { sampleSite } from '../sampleSite.ts';

/** Of no gate are the leaves one field: how documents are read that are compared. */
export const whole: ReadonlySet<string> = new Set();

const most = 3;

/** A document after the first three of some moves that can be made. */
export const changed = (site: Site, moves: readonly Move[]): Site => {
  let [now, done] = [site, 0];
  for (const move of moves) {
    const next = done < most ? after(now, move) : now;
    if (next !== now) done += 1;
    now = next;
  }
  return now;
};

const moves = fc.array(anyMove, { minLength: 9, maxLength: 9 });

const start = fc
  .record({ before: fc.array(anyMove, { maxLength: 30 }), random: randomSite, drawn: fc.boolean() })
  .map(({ before, random, drawn }) => before.reduce(after, drawn ? random : sampleSite));

/** A document, and two copies of it that were changed apart by up to three edits each. */
export const copies = fc
  .record({ base: start, mine: moves, theirs: moves })
  .map(({ base, mine, theirs }) => ({
    base,
    mine: changed(base, mine),
    theirs: changed(base, theirs),
  }));

/** As `copies`, each changed by verbs of its own alone. */
export const copiesBy = (own: RegExp, other: RegExp) => {
  const named = (pattern: RegExp) => {
    const verb = fc.constantFrom(...Object.keys(verbs).filter((name) => pattern.test(name)));
    return fc
      .array(fc.tuple(verb, anyMove), { minLength: 9, maxLength: 9 })
      .map((all) => all.map(([name, move]): Move => ({ ...move, verb: name })));
  };
  return fc.record({ base: start, mine: named(own), theirs: named(other) }).map((drawn) => ({
    base: drawn.base,
    mine: changed(drawn.base, drawn.mine),
    theirs: changed(drawn.base, drawn.theirs),
  }));
};
