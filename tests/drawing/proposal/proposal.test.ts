import * as fc from 'fast-check';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { describe, expect, it } from 'vitest';
import { customerPlan } from '../../../src/drawing/proposal/customerPlan.ts';
import { overallLengths } from '../../../src/drawing/proposal/overallLengths.ts';
import { proposal, type ProposalOptions } from '../../../src/drawing/proposal/proposal.ts';
import type { Page } from '../../../src/drawing/sheet/page.ts';
import type { PaperName } from '../../../src/drawing/sheet/papers.ts';
import type { OtherWay } from '../../../src/engine/compare/customerPrices.ts';
import { unsurveyed } from '../../../src/engine/survey/survey.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { noPriceList, type CustomerPrice } from '../../../src/engine/price/customerPrice.ts';
import { midpoint } from '../../../src/geometry/midpoint.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import type { GateId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { customerCautions } from '../../../src/trade/customerCautions.ts';
import { inches } from '../../../src/units/inches.ts';
import { formatMoney, money, type Money } from '../../../src/units/money.ts';
import { plainLength } from '../../../src/units/plainLength.ts';
import { spec } from '../../engine/plainYard.ts';
import { anyLines } from '../anyYard.ts';
import { handYard } from '../handYard.ts';
import { sampleYards } from '../sampleYards.ts';
import { letteringFaults } from '../letteringFaults.ts';
import { textsOf } from '../textsOf.ts';
import { anyPrices, filledList, pricedBy } from './priceLists.ts';

const papers: PaperName[] = ['letter', 'a4', 'tabloid', 'arch-d'];
const ways = ['portrait', 'landscape'] as const;

const told = (total: bigint, currency = 'USD'): CustomerPrice => ({
  kind: 'told',
  currency,
  subtotal: money(total),
  tax: money(total / 10n),
  total: money(total + total / 10n),
});

const linesOf = (page: Page): string[] => textsOf(pageAtoms(page)).map(({ text }) => text);
const wordsOf = (page: Page): string => linesOf(page).join(' ');

interface Asked extends Partial<Omit<ProposalOptions, 'prices'>> {
  readonly price?: CustomerPrice;
  readonly others?: readonly OtherWay[];
}

const page = (
  site: Site,
  layout: Layout,
  { price = noPriceList, others = [], ...more }: Asked = {},
): Page =>
  proposal(site, layout, { paper: 'letter', siteText: '', prices: { price, others }, ...more });

const yardNamed = (wanted: string) => {
  const yard = sampleYards.find(({ name }) => name === wanted);
  if (yard === undefined) throw new Error(`expected the sample ${wanted}`);
  return yard;
};

const empty = emptySite({ specs: {}, hardware: {} });
const bare: Layout = {
  lines: {},
  posts: new Map(),
  gates: {},
  ground: null,
  survey: unsurveyed,
  flags: [],
};

/** A yard of so many gates on legs of their own, each called and made as told. */
const gateYard = (count: number, tell: (n: number) => Partial<Site['gates'][GateId]>) => {
  const { site, layout } = handYard(
    Array.from({ length: count }, (_, n) => ({
      corners: [
        { x: 0, y: n * 120 },
        { x: 400, y: n * 120 },
      ],
      closed: false,
      maxBay: 120,
      gates: [{ leg: 0, from: 60, leaf: 44 }],
    })),
  );
  const gates = Object.entries(site.gates).map(([id, gate], n) => [id, { ...gate, ...tell(n) }]);
  const named = { ...site, specs: { 'spec:1': spec }, gates: Object.fromEntries(gates) } as Site;
  return { site: named, layout };
};

const anyWay: fc.Arbitrary<OtherWay> = fc.record({
  label: fc.string({ minLength: 1, maxLength: 200 }),
  total: fc.bigInt({ min: 0n, max: 10n ** 15n }).map(money),
  plan: fc.constantFrom('final' as const, 'open' as const),
});

const long = (word: string): string => `${word} that goes on and on `.repeat(20).slice(0, 200);

describe.each(sampleYards)('the proposal of $name', ({ site, layout, text }) => {
  it.each(papers)(
    '[D100] on %s has no text over another, outside the frame or too small',
    (paper) => {
      for (const orientation of ways) {
        for (const price of [noPriceList, told(123_456_780_000n)]) {
          const own = page(site, layout, { paper, orientation, siteText: text, price });
          expect(letteringFaults(own)).toEqual([]);
        }
      }
    },
  );

  it('[D104] names every gate with its opening, and nothing of the crew’s', () => {
    const own = page(site, layout);
    const lines = linesOf(own);
    for (const { label } of Object.values(site.gates)) expect(wordsOf(own)).toContain(label);
    const tags = new Set([...layout.posts.values()].map(({ tag }) => tag));
    const planned = customerPlan(site, layout);
    const shown = planned.filter((one) => one.kind === 'text' && tags.has(one.text));
    expect(shown).toEqual([]);
    expect(planned.some(({ kind }) => kind === 'flag' || kind === 'sign')).toBe(false);
    const noted = Object.values(site.features).flatMap((feature) =>
      feature.kind === 'note' || feature.kind === 'keep-out' ? [feature.label] : [],
    );
    for (const label of noted.filter((one) => one !== '')) expect(lines).not.toContain(label);
    expect(lines.filter((line) => /^F\d+$/.test(line))).toEqual([]);
  });
});

describe('proposal', () => {
  it('[D100] is one page for any yard, however it is named and whatever it costs', () => {
    const amount = fc.bigInt({ min: 0n, max: 10n ** 19n });
    fc.assert(
      fc.property(
        anyLines,
        fc.constantFrom(...papers),
        fc.constantFrom(...ways),
        fc.record({
          amount,
          name: fc.string({ maxLength: 200 }),
          currency: fc.constantFrom('USD', 'EUR', long('A currency')),
          tearOut: fc.integer({ min: 0, max: 5000 }),
          others: fc.array(anyWay, { maxLength: 12 }),
        }),
        (lines, paper, orientation, { amount: total, name, currency, tearOut, others }) => {
          const { site, layout } = handYard(lines);
          const job = { ...site.job, name, customer: name, place: long('A place') };
          const work = { ...site.work, tearOut: inches(tearOut) };
          const told1 = told(total, currency);
          const own = { ...site, job, work, specs: { 'spec:1': spec } };
          expect(
            letteringFaults(page(own, layout, { paper, orientation, price: told1, others })),
          ).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
    expect(letteringFaults(page(empty, bare))).toEqual([]);
  });

  it('[D106] has room for what it includes: each, then like kinds together, then how many more', () => {
    const few = gateYard(4, (n) => ({ label: `Gate ${n}` }));
    expect(wordsOf(page(few.site, few.layout))).toContain('Gate 3: single swing gate');
    const many = gateYard(60, (n) => ({ label: `Gate ${n}` }));
    const together = page(many.site, many.layout);
    expect(linesOf(together)).toContain('60');
    expect(wordsOf(together)).not.toContain('Gate 3: single');
    const unlike = gateYard(60, (n) => ({ nominal: inches(36 + n) }));
    const cut = page(unlike.site, unlike.layout);
    const more = /And (\d+) more that are not listed here/.exec(wordsOf(cut));
    const listed = linesOf(cut).filter((row) => row.startsWith('Single swing gate')).length;
    // one build besides the gates
    expect(Number(more?.[1]) + listed + 1).toBe(61);
    for (const own of [together, cut]) expect(letteringFaults(own)).toEqual([]);
    for (const orientation of ways) {
      const wordy = gateYard(40, (n) => ({
        label: long(`Gate ${n}`),
        powered: true,
        route: 'fire',
      }));
      expect(letteringFaults(page(wordy.site, wordy.layout, { orientation }))).toEqual([]);
    }
  });

  it('[D101] of money it says subtotal, tax and total, and not a word or amount of the rest', () => {
    const { site, layout } = yardNamed('back-yard');
    const tough = { ...site, work: { ...site.work, rock: 0.3, access: 0.2 } };
    fc.assert(
      fc.property(anyPrices, (prices) => {
        const { priced, price } = pricedBy(tough, layout, filledList(tough, layout, prices));
        if (price.kind !== 'told') throw new Error(price.missing.join('; '));
        const words = wordsOf(page(tough, layout, { price }));
        const amounts = words.match(/\d[\d,]*\.\d\d(?!\d)/g) ?? [];
        const { subtotal, tax, total } = price;
        const shown = [subtotal, ...(tax === null ? [] : [tax]), total].map(formatMoney);
        expect(amounts).toEqual(shown);
        expect(words).toContain(`USD ${formatMoney(total)}`);
        const sum = (priced.materials + priced.labour + priced.margin) as Money;
        expect(subtotal).toBe(sum);
        expect(total).toBe(sum + (tax ?? 0n));
        expect(words).not.toMatch(
          /\b(costs?|margin|labou?r|materials?|hours?|rate|hole|footing|concrete|rock|pack|each)\b/i,
        );
      }),
      { numRuns: 25 },
    );
  });

  it('[D101] without tax in the list it says so, and there is no subtotal', () => {
    const { site, layout } = yardNamed('back-yard');
    const price = { ...told(5_000_000_000n), tax: null } as CustomerPrice;
    const words = wordsOf(page(site, layout, { price }));
    expect(words).toContain('Total, no tax in it');
    expect(words).not.toContain('Subtotal');
  });

  it('[D103] one line stands where the price is not worked out, and no amount anywhere', () => {
    for (const { site, layout } of sampleYards) {
      const price: CustomerPrice = { kind: 'open', missing: ['a price for hog-ring'] };
      const lines = linesOf(page(site, layout, { price }));
      expect(lines.filter((line) => /price is still to be worked out/.test(line))).toHaveLength(1);
      expect(lines.join(' ')).not.toMatch(/\d\.\d\d\b|Total|hog-ring/);
    }
  });

  it('[D102] says what is included in plain words', () => {
    const { site, layout } = yardNamed('plant-nursery');
    const worked = { ...site, work: { ...site.work, tearOut: inches(1230) } };
    const words = wordsOf(page(worked, layout, { paper: 'tabloid' }));
    expect(words).toContain('6 ft, 2 line posts: chain-link fence, 6 ft high, with top rail');
    expect(words).toContain('Delivery gate: double cantilever gate, 30 ft opening, two leaves');
    expect(words).toContain('Potting yard gate: double swing gate on a centre stop, 11 ft opening');
    expect(words).toContain('Way in on foot: gap without a gate, 6 ft opening');
    expect(words).toContain('Old fence taken out and hauled away 102 ft 6 in');
    const metric = { ...worked, lengths: { system: 'mm', fraction: 16 } } as const;
    expect(wordsOf(page(metric, layout))).toContain('Old fence taken out and hauled away 31.24 m');
  });

  it('[D102] the length of a build is that of its bays, gates not among them', () => {
    const { site, layout } = gateYard(3, () => ({}));
    const bays = Object.values(layout.lines)
      .flatMap(({ runs }) => runs.flatMap(({ spaces }) => spaces))
      .reduce((sum, space) => (space.kind === 'bay' ? sum + space.length : sum), 0);
    const whole = Math.round(bays);
    const own = `${Math.floor(whole / 12)} ft${whole % 12 === 0 ? '' : ` ${whole % 12} in`}`;
    expect(linesOf(page(site, layout))).toContain(own);
  });

  it('[D104] shows lengths from end to end and openings as they are sold', () => {
    const { site, layout } = yardNamed('back-yard');
    const lines = linesOf(page(site, layout));
    expect(lines).toEqual(expect.arrayContaining(['79 ft', '47 ft 6 in', '10 ft opening']));
    const hill = yardNamed('hillside');
    expect(wordsOf(page(hill.site, hill.layout))).toMatch(/Garden gate opening about \d+ ft/);
  });

  it('[D104] the length of a curve is the one along it, and stands outside', () => {
    const { site, layout } = yardNamed('hillside');
    const runs = Object.values(layout.lines).flatMap(({ runs: own }) => own);
    const curve = runs.find(({ bow }) => bow !== 0);
    if (curve === undefined) throw new Error('expected a curve');
    const text = overallLengths(site, layout).find(({ kind }) => kind === 'text');
    if (text?.kind !== 'text' || text.beside === undefined) throw new Error('expected a text');
    const ends = curve.posts.map(({ station }) => station);
    const along = inches((ends.at(-1) ?? 0) - (ends[0] ?? 0));
    expect(text.text).toBe(plainLength(along, 'feet'));
    // away from the middle of the chord
    const middle = midpoint(curve.start, curve.end);
    const { way } = text.beside;
    expect(way.x * (text.at.x - middle.x) + way.y * (text.at.y - middle.y)).toBeGreaterThan(0);
    expect(Math.hypot(way.x, way.y)).toBeCloseTo(1, 9);
  });

  it('[D105] while a stop flag stands it says in one line that it is not final', () => {
    const { site, layout } = yardNamed('back-yard');
    const [gate] = Object.keys(site.gates) as GateId[];
    if (gate === undefined) throw new Error('expected a gate');
    const flag = (level: 'stop' | 'settle') => ({
      level,
      rule: 'test',
      place: { kind: 'gate', id: gate } as const,
      at: { x: 0, y: 0 },
      message: 'a hole 2 in too near',
    });
    const lines = (flags: Layout['flags']) => linesOf(page(site, { ...layout, flags }));
    const stopped = lines([flag('stop'), flag('stop'), flag('settle')]);
    expect(stopped.filter((line) => line.startsWith('Not final: 2 things'))).toHaveLength(1);
    expect(stopped.join(' ')).not.toContain('too near');
    expect(lines([flag('settle')]).join(' ')).not.toContain('Not final');
  });

  it('[D107] [T9] carries the cautions, claims nothing, and has room to sign', () => {
    const { site, layout } = yardNamed('back-yard');
    const words = wordsOf(page(site, layout));
    for (const caution of customerCautions) expect(words).toContain(caution);
    expect(words).toMatch(/811.*no boundary survey.*local code.*licensed professional/);
    for (const room of ['Accepted, signature', 'Date', 'Valid until']) {
      expect(linesOf(page(site, layout))).toContain(room);
    }
    expect(words).not.toMatch(/compl(y|ies|iant)|\bsafe|guarantee|certif/i);
  });

  it('[D108] is headed by job, customer, place, date and who drew it; long names go on', () => {
    const { site, layout } = yardNamed('back-yard');
    const lines = linesOf(page(site, layout));
    const { name, customer, place, date, drawnBy } = site.job;
    expect(lines).toEqual(expect.arrayContaining([name, customer, place, date, drawnBy]));
    const customers =
      'Anna Placeholder, Bertram Placeholder, Cecily Placeholder and Dora Placeholder';
    const words = wordsOf(page({ ...site, job: { ...site.job, customer: customers } }, layout));
    expect(words).toContain(customers);
    expect(lines.join(' ')).not.toContain(site.job.remark);
  });

  it('[D109] other ways to build it stand with their totals beside the yard as drawn', () => {
    const { site, layout } = yardNamed('back-yard');
    const others: OtherWay[] = [
      { label: 'Higher', total: money(4_000_000_000n), plan: 'final' },
      { label: 'Other pipe', total: money(3_500_500_000n), plan: 'open' },
    ];
    const price = told(3_000_000_000n);
    for (const orientation of ways) {
      const lines = linesOf(page(site, layout, { price, others, orientation }));
      const from = lines.indexOf('As drawn here');
      expect(lines.slice(from, from + 6)).toEqual([
        'As drawn here',
        '3,300.00',
        'Higher',
        '4,000.00',
        'Other pipe (not final)',
        '3,500.50',
      ]);
    }
    const open = page(site, layout, { price: { kind: 'open', missing: ['x'] }, others });
    expect(wordsOf(open)).not.toMatch(/Higher|As drawn here/);
    const many = Array.from({ length: 40 }, (_, n) => ({
      label: `Way ${n}`,
      total: money(BigInt(n + 1) * 1_000_000_000n),
      plan: 'final' as const,
    }));
    const cut = page(site, layout, { price, others: many });
    const more = /And (\d+) more ways, not listed here/.exec(wordsOf(cut));
    const listed = linesOf(cut).filter((line) => line.startsWith('Way ')).length;
    expect(listed).toBeGreaterThan(2);
    expect(Number(more?.[1]) + listed).toBe(40);
    expect(letteringFaults(cut)).toEqual([]);
  });
});
