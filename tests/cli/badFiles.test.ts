import { describe, expect, it } from 'vitest';
import { limits } from '../../src/site/limits.ts';
import { changed } from './changed.ts';
import { lath } from './lath.ts';
import { sampleSite } from './sampleSites.ts';

const good = sampleSite('back-yard');

/** `depth` objects in one another, as text: no program needs to have built them. */
const nested = (depth: number): string => '{"a":'.repeat(depth) + '1' + '}'.repeat(depth);

/** Marks in a row, an inch apart. */
const crowd = (count: number): object =>
  Object.fromEntries(
    Array.from({ length: count }, (_, n) => [`mark:${n}`, { x: n, y: 0, label: '', fixed: false }]),
  );

const refused: readonly (readonly [string, string, string])[] = [
  ['a truncated file', good.slice(0, good.length / 2), 'cut off or damaged'],
  ['an empty file', '', 'this is not a site file'],
  ['a text that is no JSON', 'Dear customer,', 'this is not a site file'],
  ['a foreign file', '{"type":"FeatureCollection","features":[]}', 'this is not a site file'],
  ['a list', '[1,2,3]', 'this is not a site file'],
  ['a newer version', changed({ version: 99 }), 'version'],
  [
    'a hostile key',
    good.replace('"marks": {', '"marks": {"__proto__": {"polluted": true},'),
    'found "__proto__"',
  ],
  [
    'a key named constructor',
    good.replace('"marks": {', '"marks": {"constructor": {"x": 1, "y": 1, "label": ""},'),
    'marks › constructor',
  ],
  [
    'too many marks',
    changed({ marks: crowd(limits.marks + 1) }),
    `at most ${limits.marks} entries`,
  ],
  ['objects nested too deep', good.replace('"marks": {', `"marks": {"m": ${nested(50)},`), 'most'],
  [
    'a ten-megabyte label',
    changed({ 'job/name': 'x'.repeat(10_000_000) }),
    'job › name: expected at most 200 characters',
  ],
  [
    'a mark off the earth',
    good.replace(/"x": 240,/, '"x": 1e308,'),
    'x: expected at most 633600, found 1e+308',
  ],
  [
    'a leg that is not there',
    changed({ 'gates/gate:walk/leg': 'vertex:nowhere' }),
    'gates › gate:walk › leg: expected the start of a leg of line:yard',
  ],
];

describe('files that cannot be opened', () => {
  it.each(refused)('[K2] %s is one line with the path, and code 2', async (_, text, reason) => {
    for (const verb of ['layout', 'flags']) {
      const said = await lath([verb, 'yard.json'], { 'yard.json': text });
      expect(said).toMatchObject({ code: 2, out: '' });
      expect(said.err).toMatch(/^yard\.json: [^\n]{1,300}\n$/);
      expect(said.err).toContain(reason);
    }
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });
});

const emptyLine = {
  label: 'New line',
  spec: 'spec:five-foot',
  closed: false,
  hook: 'start',
  path: {},
  stepped: {},
  follows: null,
  guards: null,
  curved: {},
  walls: {},
};

const flagged: readonly (readonly [string, string, 0 | 1, RegExp])[] = [
  [
    'an empty fence line',
    changed({ 'lines/line:new': emptyLine }),
    0,
    /^settle +line:new +New line has no leg: expected at least two marks [^\n]+$/m,
  ],
  [
    'two marks on one spot',
    changed({ 'marks/mark:north-east/x': 6 }),
    // the fence runs back over its own gate: the leaf meets it
    1,
    /^settle +mark:north-east +Back yard has two marks on one spot: expected [^\n]+$/m,
  ],
  [
    'a mile-long leg',
    changed({ 'marks/mark:north-west/y': 63_624, 'marks/mark:north-east/y': 63_624 }),
    0,
    // a mile is 5,280 ft: 63,624 - 264 in
    /^caution +vertex:yard-2 +Back yard has a leg of 5280'-0": [^\n]+$/m,
  ],
  [
    'a gate wider than its leg',
    changed({
      'gates/gate:drive/leaves/leaf:drive-1/widths/top': 120,
      'gates/gate:drive/leaves/leaf:drive-2/widths/top': 120,
    }),
    1,
    /^stop +gate:drive +Drive gate \(opening 20'-6 1\/4"\)[^\n]+ wider than [^\n]+$/m,
  ],
];

describe('sites that open and must be mended', () => {
  it.each(flagged)('[K7] %s is one line, and the rest is laid out', async (_, text, code, line) => {
    const flags = await lath(['flags', 'yard.json'], { 'yard.json': text });
    expect(flags).toMatchObject({ code, err: '' });
    expect(flags.out).toMatch(line);
    const layout = await lath(['layout', 'yard.json'], { 'yard.json': text });
    expect(layout).toMatchObject({ code, err: '' });
    expect(layout.out).toMatch(line);
    expect(layout.out).toContain('Walk gate, between');
    expect(layout.out).not.toMatch(/NaN|Infinity|undefined/);
  });
});
