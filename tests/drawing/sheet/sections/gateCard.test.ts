import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnsIn, paginate } from '../../../../src/drawing/sheet/flow/paginate.ts';
import { laid, papers, type PaperName } from '../../../../src/drawing/sheet/papers.ts';
import { openingsSection } from '../../../../src/drawing/sheet/sections/openingsSection.ts';
import { sheetFrame } from '../../../../src/drawing/sheet/sheetFrame.ts';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import type { Layout } from '../../../../src/engine/layout.ts';
import type { Site } from '../../../../src/site/site.ts';
import { inches } from '../../../../src/units/inches.ts';
import { addFeature } from '../../../../src/site/edits/addFeature.ts';
import { cantilever, gap, swing, wayYard } from '../../../engine/wayYard.ts';
import { bare, fence, gateOn } from '../../../engine/plainYard.ts';
import { anyGate } from '../../detail/anyGate.ts';
import { sampleYards } from '../../sampleYards.ts';
import { overlapsOf, textsOf } from '../../textsOf.ts';

const names = Object.keys(papers) as PaperName[];
const ways = ['portrait', 'landscape'] as const;
const sheets = names.flatMap((name) => ways.map((way) => ({ name, way })));

/** The cards of a site's gates on a paper, and how high a column of that is. */
const cardsOn = (site: Site, layout: Layout, { name, way }: (typeof sheets)[number]) => {
  const { content } = sheetFrame(laid(name, way));
  const [, ...cards] = openingsSection(site, layout, columnsIn(content));
  return { cards: cards.flatMap(({ rows }) => rows), content };
};

const wordsOf = (site: Site, sheet = sheets[0] ?? { name: 'letter', way: 'portrait' }): string =>
  cardsOn(site, layOutSite(site), sheet)
    .cards.flatMap(({ atoms }) => textsOf(atoms).map(({ text }) => text))
    .join(' ');

const fits = (site: Site, layout: Layout, sheet: (typeof sheets)[number]): void => {
  const { cards, content } = cardsOn(site, layout, sheet);
  for (const { height, atoms } of cards) {
    expect(height).toBeLessThanOrEqual(content.height);
    expect(overlapsOf(atoms)).toEqual([]);
  }
  expect(cards.length).toBe(Object.keys(layout.gates).length);
};

describe('gateCard', () => {
  describe.each(sampleYards)('of $name', ({ site, layout }) => {
    it.each(sheets)('[D128] has room in one column of $name, $way', (sheet) => {
      fits(site, layout, sheet);
      const words = wordsOf(site, sheet);
      expect(words).not.toContain('has no room');
      expect(words).not.toContain('No room');
    });
  });

  it('[D128] of any gate has room in one column of any paper', () => {
    fc.assert(
      fc.property(anyGate, fc.constantFrom(...sheets), (site, sheet) => {
        fits(site, layOutSite(site), sheet);
      }),
      { numRuns: 30 },
    );
  });

  it('[D128] of one gate is on one page, whatever is written on it', () => {
    const { content } = sheetFrame(laid('letter', 'portrait'));
    const site = wayYard(cantilever);
    const cards = openingsSection(site, layOutSite(site), columnsIn(content));
    expect(paginate(cards, content).length).toBeLessThanOrEqual(2);
  });

  it('[D126] of a gate that is not placed says so in a line', () => {
    // wider than its leg
    const words = wordsOf(wayYard({ kind: 'gap', clear: inches(2000) }));
    expect(words).toContain('No detail is drawn before the gate is placed');
    expect(wordsOf(wayYard(gap))).not.toContain('No detail');
  });

  it('[D127] says from where it is seen, which way it opens from there, and its scale', () => {
    const open = wordsOf(wayYard(swing, 1, { opens: 'left' }));
    expect(open).toMatch(/Seen, B on the left, C on the right, opens away from you; .* in = 1 ft/);
    expect(wordsOf(wayYard(swing, 1, { opens: 'right' }))).toContain('opens towards you');
    expect(wordsOf(wayYard(cantilever))).toContain('rolls behind the fence');
  });

  it('[D127] of a fence that closes says whether it is seen from inside or outside', () => {
    const spots: [number, number][] = [
      [0, 0],
      [400, 0],
      [400, 300],
      [0, 300],
    ];
    const seen = (round: [number, number][]): string =>
      wordsOf(gateOn(fence(bare, round, 'closed'), 0, { from: 'middle', offset: 0 }));
    // the right of a leg is outside where one goes round counter-clockwise
    expect(seen(spots)).toContain('Seen from outside, ');
    expect(seen(spots.toReversed())).toContain('Seen from inside, ');
  });

  it('[D129] names what a leaf meets before it is open', () => {
    const site = wayYard(swing, 1, { opens: 'left' });
    expect(wordsOf(site)).not.toContain('it meets');
    const walled = addFeature(site, { kind: 'building', label: 'Shed' }, [
      { x: 200, y: 20 },
      { x: 400, y: 20 },
      { x: 400, y: 90 },
      { x: 200, y: 90 },
    ]);
    expect(wordsOf(walled)).toMatch(/Before it is open it meets .*Shed.*, at \d+/);
  });
});
