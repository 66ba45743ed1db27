import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkValue } from '../../src/site/checkValue.ts';
import {
  joinedLineage,
  lineageAt,
  lineageSchema,
  mostSaves,
  newLineage,
  withSave,
  type Lineage,
} from '../../src/site/lineage.ts';
import { commonSaves } from '../../src/site/merge/commonSaves.ts';
import { openDocument } from '../../src/site/openDocument.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { sheetText } from '../../src/site/sheetText.ts';
import type { Site } from '../../src/site/site.ts';
import { unlinedText } from '../../src/site/unlinedText.ts';
import { sampleSite } from './sampleSite.ts';

const digest = (n: number): string => n.toString(16).padStart(64, '0');
const job = 'ab'.repeat(16);

const saved = (saves: readonly number[], from: Lineage = newLineage): Lineage =>
  saves.reduce((lineage, n) => withSave(lineage, digest(n), job), from);

const numbers = fc.array(fc.nat(50), { maxLength: 60 });

describe('where a document comes from', () => {
  it('[S63] is the same after a second save of the same document', () => {
    fc.assert(
      fc.property(numbers, fc.nat(50), (before, last) => {
        const once = saved([...before, last]);
        expect(withSave(once, digest(last), 'cd'.repeat(16))).toBe(once);
      }),
    );
  });

  it('[S63] is for one document what it was when that was first saved', () => {
    const first = saved([1, 2]);
    expect(lineageAt(saved([3, 4], first), digest(2))).toEqual(first);
    expect(lineageAt(first, digest(2))).toEqual(first);
  });

  it('[S63] remembers the latest saves alone, and opens', () => {
    fc.assert(
      fc.property(numbers, numbers, (one, other) => {
        const joined = joinedLineage(saved(one), saved(other));
        expect(joined).toEqual(joinedLineage(saved(other), saved(one)));
        for (const lineage of [saved(one), joined]) {
          expect(lineageSchema.safeParse(lineage).success).toBe(true);
        }
      }),
    );
    const long = saved(Array.from({ length: 100 }, (_, n) => n));
    expect(Object.keys(long.saves)).toEqual(
      Array.from({ length: mostSaves }, (_, n) => digest(100 - mostSaves + n)),
    );
  });

  it('[S63] keeps the job that it was given first', () => {
    expect(withSave(saved([1]), digest(2), 'cd'.repeat(16)).job).toBe(job);
  });

  it('[S63] is in no check value and in no digest', () => {
    const site: Site = { ...sampleSite, lineage: saved([1, 2, 3]) };
    expect(saveSite(site)).not.toBe(saveSite(sampleSite));
    expect(checkValue(sheetText(site))).toBe(checkValue(sheetText(sampleSite)));
    expect(unlinedText(site)).toBe(unlinedText(sampleSite));
  });

  it('[S2] is refused in one line where it says what it cannot', () => {
    const bad = { ...sampleSite, lineage: { job: 'mine', saves: {} } };
    expect(openDocument(bad)).toEqual({
      ok: false,
      reason: 'lineage › job: expected 32 hex digits, found "mine"',
    });
  });

  it('[S64] tells what both copies came from, the latest first', () => {
    const mine = { site: { ...sampleSite, lineage: saved([5], saved([1, 2])) }, digest: digest(9) };
    const theirs = { site: { ...sampleSite, lineage: saved([1, 2, 7]) }, digest: digest(8) };
    expect(commonSaves(mine, theirs)).toEqual([digest(2), digest(1)]);
  });

  it('[S64] a copy that the other came from is what both came from', () => {
    const older = { site: { ...sampleSite, lineage: saved([1]) }, digest: digest(2) };
    const newer = { site: { ...sampleSite, lineage: saved([1, 2, 3]) }, digest: digest(4) };
    expect(commonSaves(older, newer)[0]).toBe(digest(2));
    expect(commonSaves(newer, older)[0]).toBe(digest(2));
  });
});
