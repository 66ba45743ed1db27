import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bracingTexts } from '../../../src/drawing/tables/bracingTexts.ts';
import { leafLoadTexts } from '../../../src/drawing/tables/leafLoadTexts.ts';
import { structureTable } from '../../../src/drawing/tables/structureTable.ts';
import { layOutFrom } from '../../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Gate } from '../../../src/site/gate.ts';
import type { Mark } from '../../../src/site/mark.ts';
import { checked } from '../../../src/site/checked.ts';
import { siteSchema, type Site } from '../../../src/site/site.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import type { LineId } from '../../../src/site/ids.ts';
import { toldSite } from './toldSite.ts';

const nonsense = /NaN|Infinity|undefined|null|\[object/;

type Motion = (x: number, y: number) => readonly [number, number];

const moved = (site: Site, motion: Motion): Site => ({
  ...site,
  marks: Object.fromEntries(
    Object.entries<Mark>(site.marks).map(([id, mark]) => {
      const [x, y] = motion(mark.x, mark.y);
      return [id, { ...mark, x, y }];
    }),
  ),
});

const mirrored = (site: Site): Site => ({
  ...moved(site, (x, y) => [x, -y]),
  gates: Object.fromEntries(
    Object.entries<Gate>(site.gates).map(([id, gate]) => [
      id,
      { ...gate, opens: gate.opens === 'left' ? 'right' : 'left' },
    ]),
  ),
});

/** What the flags of structure and places say, whatever they are called and where they stand. */
const said = (site: Site): string[] =>
  layOutSite(site)
    .flags.filter(({ rule }) =>
      /wind|frost|thinner|table|pool|accessible|latch|fire|powered|barbed|overhead|leaf sags|under its leaf|for its leaf|higher than/.test(
        rule,
      ),
    )
    .map(({ level, rule, place }) => `${level} ${rule} ${place.kind}`)
    .toSorted();

describe('flags of sites of which much is told', () => {
  it('[F47] every one is words and figures, whatever the document holds', () => {
    fc.assert(
      fc.property(toldSite, (site) => {
        const layout = layOutSite(site);
        for (const { message, at } of layout.flags) {
          expect(message).not.toMatch(nonsense);
          expect(Number.isFinite(at.x) && Number.isFinite(at.y)).toBe(true);
        }
        const texts = [
          ...structureTable(site, layout).rows.flat(),
          ...bracingTexts(site, layout),
          ...Object.values(layout.gates).flatMap((gate) => leafLoadTexts(site, gate, layout)),
        ];
        for (const text of texts) expect(text).not.toMatch(nonsense);
      }),
      { numRuns: 150 },
    );
  });

  it('[F47] are the same of the site turned, moved, mirrored and drawn backwards', () => {
    const [cos, sin] = [Math.cos(0.7), Math.sin(0.7)];
    fc.assert(
      fc.property(toldSite, (site) => {
        const before = said(site);
        expect(said(moved(site, (x, y) => [x + 700, y - 90]))).toEqual(before);
        expect(said(moved(site, (x, y) => [cos * x - sin * y, sin * x + cos * y]))).toEqual(before);
        expect(said(mirrored(site))).toEqual(before);
        const back = (Object.keys(site.lines) as LineId[]).reduce(reverseLine, site);
        expect(said(back)).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });

  it('[F47] are the same from the layout of another site as from none', () => {
    fc.assert(
      fc.property(toldSite, toldSite, (a, b) => {
        const mixed = { ...a, conditions: b.conditions, specs: b.specs, townRules: b.townRules };
        const from = layOutFrom(mixed, layOutFrom(a, null)).layout;
        expect(from.flags).toEqual(layOutSite(mixed).flags);
      }),
      { numRuns: 60 },
    );
  });

  it('[F47] such a site is a document', () => {
    fc.assert(
      fc.property(toldSite, (site) => {
        expect(() =>
          checked(siteSchema, JSON.parse(JSON.stringify(site)) as never, []),
        ).not.toThrow();
      }),
      { numRuns: 5 },
    );
  });
});
