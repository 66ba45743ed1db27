import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { orderSheet } from '../../../src/drawing/orders/orderSheet.ts';
import { orderRows, orderTables } from '../../../src/drawing/orders/orderTables.ts';
import { unsignedGates } from '../../../src/drawing/orders/unsignedGates.ts';
import { papers, type PaperName } from '../../../src/drawing/sheet/papers.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { sampleYards } from '../sampleYards.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';
import { allSigned, walk, yard } from './signedYard.ts';

const sheetOf = (site: Site, paper: PaperName = 'letter') =>
  orderSheet(site, layOutSite(site), { paper, siteText: saveSite(site) });
const wordsOf = (site: Site): string[] =>
  sheetOf(site).map((page) =>
    textsOf(pageAtoms(page))
      .map(({ text }) => text)
      .join('\n'),
  );
const marksOf = (site: Site): string[] =>
  orderRows(site, layOutSite(site)).flatMap(({ rows }) => rows.map((row) => row.at(-1) ?? ''));

describe('the order sheet', () => {
  it('[D47] marks every page and every line while an opening is not signed off', () => {
    for (const site of [yard, setGateOpens(allSigned(yard), walk, 'right')]) {
      expect(wordsOf(site).every((page) => page.includes('UNSIGNED'))).toBe(true);
      expect(new Set(marksOf(site))).toEqual(new Set(['UNSIGNED']));
      expect(sheetOf(site).every(({ title }) => title.includes('UNSIGNED'))).toBe(true);
    }
  });

  it('[D47] marks nothing once all are signed, and says who signed', () => {
    const site = allSigned(yard);
    const words = wordsOf(site).join('\n');
    expect(words).not.toContain('UNSIGNED');
    expect(words).toContain(site.gates[walk]?.signed?.check ?? 'no check');
    expect(new Set(marksOf(site))).toEqual(new Set(['signed']));
  });

  it('[D47] names the gates that are not signed and those of which the sign-off is void', () => {
    const site = setGateOpens(allSigned(yard), walk, 'right');
    expect(unsignedGates(site, layOutSite(site))).toEqual(['Walk gate (sign-off void)']);
    expect(unsignedGates(yard, layOutSite(yard))).toHaveLength(2);
  });

  it('[D46] has a table for each part of the order that there is', () => {
    expect(orderTables(yard, layOutSite(yard)).map(({ title }) => title.split(':')[0])).toEqual([
      'Leaves',
      'Hinges',
      'Latches and drop rods',
    ]);
  });

  it.each(sampleYards)(
    '[D9] [D46] sets $name on every paper without text over text',
    ({ site }) => {
      for (const paper of Object.keys(papers) as PaperName[]) {
        const pages = sheetOf(site, paper);
        expect(pages.length).toBeGreaterThan(0);
        for (const page of pages) expect(overlapsOf(pageAtoms(page))).toEqual([]);
      }
    },
  );
});
