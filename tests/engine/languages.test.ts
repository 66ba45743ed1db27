import fc from 'fast-check';
import { afterAll, describe, expect, it, vi } from 'vitest';
import type { Layout } from '../../src/engine/layout.ts';
import type { Load } from '../../src/engine/load/load.ts';
import type { Remedy } from '../../src/engine/set/remedy.ts';
import type { Saying } from '../../src/phrases/phrase.ts';
import { spanish } from '../../src/phrases/es.ts';
import type { Gate } from '../../src/site/gate.ts';
import { openSite } from '../../src/site/openSite.ts';
import type { Site } from '../../src/site/site.ts';
import { fencePipes } from '../../src/trade/pipes.ts';
import { inches } from '../../src/units/inches.ts';
import { sampleSites } from '../cli/sampleSites.ts';
import { toldSite } from './checks/toldSite.ts';
import { bare, fence, firstGate, gateOn } from './plainYard.ts';
import { cantilever, wayYard } from './wayYard.ts';

/** A yard whose gate was set so far off, so that there are remedies. */
const setOff = (site: Site, off: number): Site => {
  const id = firstGate(site);
  const gate = site.gates[id] as Gate;
  const asSet = {
    top: inches(off),
    bottom: null,
    leans: { start: null, end: null },
    leaves: {},
    hinges: {},
    remark: '',
    by: 'AB',
    on: '',
  };
  return { ...site, gates: { [id]: { ...gate, asSet } } };
};

const opened = sampleSites.map(({ text }) => {
  const site = openSite(text);
  if (!site.ok) throw new Error(site.reason);
  return site.value;
});
const line = fence(bare, [
  [0, 0],
  [480, 0],
]);
const plain = gateOn(line, 0, { from: 'middle', offset: 0 });
const sites: readonly Site[] = [
  ...opened,
  ...fc.sample(toldSite, { numRuns: 24, seed: 7 }),
  wayYard(cantilever),
  ...[30, 36, 40, 48, 60].map((width) => setOff(plain, width)),
];

interface Told {
  readonly layout: Layout;
  readonly load: Load;
  readonly remedies: readonly Remedy[];
}

/** The engine in a language that is spoken before any of it is loaded. */
const engineIn = async (saying: Saying | null) => {
  vi.resetModules();
  const { speakBy } = await import('../../src/phrases/phrase.ts');
  speakBy(saying);
  const { layOutSite } = await import('../../src/engine/layOutSite.ts');
  const { loadOf } = await import('../../src/engine/load/loadOf.ts');
  const { setOf } = await import('../../src/engine/set/setOf.ts');
  const { cautions } = await import('../../src/trade/cautions.ts');
  const { customerCautions } = await import('../../src/trade/customerCautions.ts');
  const { hangingNotes } = await import('../../src/trade/hangingNotes.ts');
  const told = (site: Site): Told => {
    const layout = layOutSite(site);
    const remedies = Object.values<Gate>(site.gates).flatMap(
      (gate) => setOf(site, gate)?.remedies ?? [],
    );
    return { layout, load: loadOf(site, layout), remedies };
  };
  const always = [
    ...cautions.flatMap(({ text, source }) => [text, source?.text ?? '']),
    ...customerCautions,
    ...hangingNotes.map(({ text }) => text),
  ];
  return { told, always };
};

/** Every text of what follows from a site that a reader reads. */
const textsOf = ({ layout, load, remedies }: Told): string[] => [
  ...layout.flags.map(({ message }) => message),
  ...Object.values(layout.gates).flatMap(({ opening }) =>
    opening.terms.flatMap(({ label, source }) => [label, source]),
  ),
  ...load.lines.flatMap(({ item, rule, source, sold }) => [
    item,
    rule,
    source,
    sold?.pack ?? '',
    sold?.source ?? '',
  ]),
  ...load.tickets.flatMap(({ item, ticket }) => [
    item,
    ...ticket.sticks.flatMap(({ pieces }) => pieces.map((piece) => piece.for)),
  ]),
  ...remedies.flatMap(({ what, working }) => [what, working]),
];

/** All that is no text: what is built, held, bought and cut, and where flags stand. */
const figuresOf = ({ layout, load, remedies }: Told) => ({
  gates: Object.values(layout.gates).map(({ opening, placed, stands, start, end }) => {
    const { terms, ...rest } = opening;
    const sizes = terms.map(({ low, planned, high, spread, role }) => [
      low,
      planned,
      high,
      spread,
      role,
    ]);
    return { rest, sizes, placed, stands, start, end };
  }),
  posts: [...layout.posts.values()].map(({ id, tag, at, od, length, hole }) => {
    return [id, tag, at, od, length, hole.diameter, hole.depth];
  }),
  runs: Object.values(layout.lines).map(({ runs }) =>
    runs.map(({ posts, spaces }) => [posts, spaces]),
  ),
  flags: layout.flags.map(({ level, rule, place, at, mend, message, said = message }) => {
    return { level, rule, place, at, mend, said };
  }),
  lines: load.lines.map(({ code, part, count, unit, each, sold, of }) => {
    return { code, part, count, unit, each, count_: sold?.count, left: sold?.left, of };
  }),
  tickets: load.tickets.map(({ code, kind, ticket }) => [code, kind, ticket.bought, ticket.least]),
  remedies: remedies.map(({ kind, takesUp, enough, post }) => [kind, takesUp, enough, post]),
});

/** Names that somebody gave in a document. */
const namesIn = (value: unknown, key = ''): string[] => {
  if (typeof value === 'string') {
    const names = /^(?:label|town|words|source|by|on|panel|rail|board|nominal|point)$/;
    return names.test(key) && /[a-z]/i.test(value) ? [value.replace(/\s+/g, ' ').trim()] : [];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([own, inner]) => namesIn(inner, own));
};

/** Published documents by their names, which no language translates. */
const published =
  /14 May 1993|W\. McElroy, Fences & Retaining Walls, Craftsman: chain link|Chain Link Fencing, Detailed Instructions \(installation sheet, Scribd \d+\)|Caltrans(?: Standard Specifications)?|Iowa DOT Standard Specifications|CPSC Publication|LA County Code Title|CLFMI Standard Guide for Metallic-Coated Steel Chain Link Fence Fabric|City of Everett WA, Beverly Park Substation sitework specification, p\.|Tremonton|(?:Table|standard roll)|CLFMI/g;
/** Pipe by the name that it is sold by. */
const pipes = fencePipes.map(({ label }) => label);
const ids = /\b[a-z-]+:[\w:-]+/g;
const units = /\b(?:mm|cm|m|ft|in|lb|psf|psi|mph)\b/g;

/** A text without what is between marks, without figures, units, and what a document or publisher calls things. */
const leftOf = (text: string, names: readonly string[]): string =>
  names
    .reduce((rest, name) => rest.replaceAll(name, ' '), text.replace(/«[^»]*»/g, ' '))
    .replace(published, ' ')
    .replace(ids, ' ')
    .replace(units, ' ')
    .replace(/\b[A-Z]+[\dA-Z]*\b/g, ' ');

/** Each piece of a phrase between marks, its fillings outside of them. */
const marked: Saying = (key) => {
  const text = key.replace(/^[a-z ]+\|/, '');
  return text
    .split(/(\{\d+\})/)
    .map((part, n) => (n % 2 === 1 || part === '' ? part : `«${part}»`))
    .join('');
};

describe('the engine in another language', () => {
  afterAll(() => vi.resetModules());

  it('[A21] has every word of flags, remedies, openings, loads and cautions in phrases', async () => {
    const { told, always } = await engineIn(marked);
    const left = new Set<string>();
    for (const text of always) if (/[a-z]{2}/i.test(leftOf(text, []))) left.add(text);
    for (const site of sites) {
      const names = [...new Set([...namesIn(site), ...pipes])].toSorted(
        (a, b) => b.length - a.length,
      );
      for (const text of textsOf(told(site)))
        if (/[a-z]{2}/i.test(leftOf(text, names))) left.add(`${text}  >>  ${leftOf(text, names)}`);
    }
    expect([...left]).toEqual([]);
  }, 120_000);

  it('[A20] [A21] lays out, flags, counts and cuts the same in Spanish as in English', async () => {
    const english = await engineIn(null);
    const inEnglish = sites.map(english.told);
    const other = await engineIn((key) => spanish[key]);
    const inSpanish = sites.map(other.told);
    sites.forEach((_, n) => {
      const [one, two] = [inEnglish[n], inSpanish[n]];
      if (one === undefined || two === undefined) throw new Error('expected a layout of each site');
      expect(figuresOf(two)).toEqual(figuresOf(one));
    });
    const rules = new Set(inEnglish.flatMap(({ layout }) => layout.flags.map(({ rule }) => rule)));
    // the yards are such that much is flagged
    expect(rules.size).toBeGreaterThan(40);
    const differ = inSpanish.flatMap(({ layout }) =>
      layout.flags.map(({ said }) => said !== undefined),
    );
    expect(differ.every(Boolean)).toBe(true);
  }, 120_000);
});
