import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openSite } from '../../../src/site/openSite.ts';
import { brokenReference } from '../../../src/site/references.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { siteSchema } from '../../../src/site/site.ts';
import { sampleSite } from '../sampleSite.ts';
import { after, anyMove, anyMoves, verbs } from './anyEdits.ts';

describe('edits in any order', () => {
  it('[S10] always give a document that opens again as it is', () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        let site = sampleSite;
        for (const move of moves) {
          site = after(site, move);
          expect(brokenReference(site)).toBeNull();
        }
        expect(siteSchema.safeParse(site).success).toBe(true);
        expect(openSite(saveSite(site))).toEqual({ ok: true, value: site });
      }),
    );
  });

  it('[S9] leave the site that they were given as it was, and share what they do not change', () => {
    fc.assert(
      fc.property(anyMoves, anyMove, (moves, last) => {
        const site = moves.reduce(after, sampleSite);
        const text = JSON.stringify(site);
        const next = after(site, last);
        expect(JSON.stringify(site)).toBe(text);
        const shared = ['marks', 'lines', 'gates', 'features', 'specs', 'hardware'] as const;
        for (const name of [...shared, 'alternatives'] as const) {
          const [before, now] = [site[name], next[name]] as Record<string, unknown>[];
          const alike = JSON.stringify(before) === JSON.stringify(now);
          expect(before === now).toBe(alike);
          for (const [id, value] of Object.entries(now ?? {})) {
            if (JSON.stringify(value) === JSON.stringify(before?.[id])) {
              expect(value).toBe(before?.[id]);
            }
          }
        }
        expect(next === site).toBe(JSON.stringify(next) === text);
      }),
    );
  });

  it('every verb of the random hand does something at some time', () => {
    const done = new Set<string>();
    fc.assert(
      fc.property(anyMoves, (moves) => {
        moves.reduce((site, move) => {
          const next = after(site, move);
          if (next !== site) done.add(move.verb);
          return next;
        }, sampleSite);
      }),
      { numRuns: 2500, seed: 1 },
    );
    expect([...done].toSorted()).toEqual(Object.keys(verbs).toSorted());
  });
});
