import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { merged, settled } from '../../../src/site/merge/merged.ts';
import { keyOf, type Part } from '../../../src/site/merge/part.ts';
import { partsOf } from '../../../src/site/merge/partsOf.ts';
import { lineUnder, refsOf } from '../../../src/site/merge/refsOf.ts';
import { same } from '../../../src/site/merge/same.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import type { Site } from '../../../src/site/site.ts';
import { copies, copiesBy, whole } from './copies.ts';

const opens = (site: Site): void => expect(openDocument(site).ok).toBe(true);

/** Each case is some merges of two documents. */
const runs = { numRuns: 40 };

describe('two copies of one document', () => {
  it('[S85] make a document that opens, whatever is chosen', () => {
    fc.assert(
      fc.property(copies, fc.infiniteStream(fc.boolean()), ({ base, mine, theirs }, chance) => {
        for (const from of [base, null]) {
          const merge = merged(from, mine, theirs);
          opens(merge.site);
          const choices = merge.conflicts.map(
            ({ id }) => [id, chance.next().value ? 'mine' : 'theirs'] as const,
          );
          opens(settled(merge, new Map(choices)));
          // copies of one document can always be put together
          expect(merge.conflicts.filter(({ is }) => is === 'not together')).toEqual([]);
        }
      }),
      runs,
    );
  });

  // Khanna, Kunal, Pierce, "A Formal Investigation of Diff3" (FSTTCS 2007), idempotence and its like:
  // two copies that say the same are what they say, and a copy that nobody changed adds nothing.
  it('[S87] of which nobody changed one are the other', () => {
    fc.assert(
      fc.property(copies, ({ base, mine }) => {
        const merges = [
          merged(base, mine, base),
          merged(base, base, mine),
          merged(base, mine, mine),
          merged(null, mine, mine),
        ];
        for (const merge of merges) {
          expect(merge.conflicts).toEqual([]);
          expect(merge.site).toEqual(mine);
        }
      }),
      runs,
    );
  });

  it('[S86] merge to the same whoever merges them', () => {
    fc.assert(
      fc.property(copies, ({ base, mine, theirs }) => {
        for (const from of [base, null]) {
          const [here, there] = [merged(from, mine, theirs), merged(from, theirs, mine)];
          const turned = there.conflicts.map(({ id, mine: own, theirs: other }) => [
            id,
            other,
            own,
          ]);
          expect(turned).toEqual(here.conflicts.map((one) => [one.id, one.mine, one.theirs]));
          const all = new Map(there.conflicts.map(({ id }) => [id, 'theirs'] as const));
          expect(settled(there, all)).toEqual(here.site);
        }
      }),
      runs,
    );
  });

  it('[S86] merged into both, are one document that is merged no further', () => {
    fc.assert(
      fc.property(copies, ({ base, mine, theirs }) => {
        const { site } = merged(base, mine, theirs);
        // whoever has the merged one has both copies in it: each of them is what it came from
        for (const copy of [mine, theirs]) {
          expect(merged(copy, site, copy)).toMatchObject({ site, conflicts: [] });
        }
      }),
      runs,
    );
  });

  it('[S88] lose nothing that either added or changed and that no conflict shows', () => {
    let seen = 0;
    fc.assert(
      fc.property(copies, ({ base, mine, theirs }) => {
        const merge = merged(base, mine, theirs);
        const was = partsOf(merge.copies.base ?? base, whole);
        const now = partsOf(merge.site, whole);
        const keys = new Set(merge.conflicts.map(({ key }) => key));
        const shown = (part: Part, owner: Part | undefined): boolean =>
          [keyOf(part), part.owner, lineUnder(owner ?? part) ?? ''].some((one) => keys.has(one));
        for (const copy of [merge.mine, merge.theirs]) {
          const parts = partsOf(copy, whole);
          for (const [key, part] of parts) {
            const before = was.get(key);
            const changed = Object.entries(part.fields).filter(
              // a row gives its own keys, and a gate keeps its place on the ground however it is told
              ([name, value]) =>
                name !== 'order' && name !== 'place' && !same(value, before?.fields[name]),
            );
            if (before !== undefined && changed.length === 0) continue;
            if (shown(part, parts.get(part.owner))) continue;
            seen += 1;
            const is = now.get(key);
            expect({ key, is: is === undefined }).toEqual({ key, is: false });
            for (const [name, value] of changed) {
              expect({ key, name, value: is?.fields[name] }).toEqual({ key, name, value });
            }
          }
        }
      }),
    );
    expect(seen).toBeGreaterThan(300);
  });

  it('[S88] keep out what one took out and nothing of the other needs', () => {
    let seen = 0;
    fc.assert(
      fc.property(copies, ({ base, mine, theirs }) => {
        const merge = merged(base, mine, theirs);
        const was = partsOf(merge.copies.base ?? base, whole);
        const now = partsOf(merge.site, whole);
        const needed = new Set([...now.values()].flatMap((part) => [...refsOf(part), part.owner]));
        const [own, other] = [partsOf(merge.mine, whole), partsOf(merge.theirs, whole)];
        const shown = new Set(merge.conflicts.map(({ key }) => key));
        for (const [key, part] of was) {
          if (own.has(key) === other.has(key) || needed.has(key)) continue;
          const owner = was.get(part.owner) ?? part;
          const covers = [key, part.owner, lineUnder(owner) ?? ''];
          if (covers.some((one) => shown.has(one))) continue;
          const left = own.get(key) ?? other.get(key);
          if (part.kind === 'marks' && !same(left?.fields, part.fields)) continue;
          seen += 1;
          expect({ key, is: now.has(key) }).toEqual({ key, is: false });
        }
      }),
    );
    expect(seen).toBeGreaterThan(100);
  });

  // Khanna, Kunal, Pierce (as above): changes that are well apart never are in conflict.
  it('[S89] are in no conflict where each changed what the other left alone', () => {
    const apart = copiesBy(
      /Offcut|TownRule|Shots|Shot$/,
      /Line$|Gate|Mark|Leg|Pin|Feature|Side|Corner|Alternative|curve/,
    );
    fc.assert(
      fc.property(apart, ({ base, mine, theirs }) => {
        const merge = merged(base, mine, theirs);
        expect(merge.conflicts).toEqual([]);
        for (const map of ['shots', 'offcuts', 'townRules'] as const) {
          expect(merge.site[map]).toEqual(mine[map]);
        }
        for (const map of [
          'lines',
          'gates',
          'marks',
          'pins',
          'features',
          'alternatives',
        ] as const) {
          expect(merge.site[map]).toEqual(theirs[map]);
        }
      }),
    );
  });
});
