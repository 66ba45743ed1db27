import { lotPoints } from '../../src/engine/calls/lotPoints.ts';
import { readCalls } from '../../src/engine/calls/readCalls.ts';
import { traverse } from '../../src/engine/calls/traverse.ts';
import { usualSpec } from '../../src/engine/usualSpec.ts';
import { bookFromCsv } from '../../src/importers/book/bookFromCsv.ts';
import { townRulesFromCsv } from '../../src/importers/book/townRulesFromCsv.ts';
import { pricesFromCsv } from '../../src/importers/csv/pricesFromCsv.ts';
import { shotsFromCsv } from '../../src/importers/csv/shotsFromCsv.ts';
import { siteInPdf } from '../../src/importers/pdf/siteInPdf.ts';
import { pictureHeader } from '../../src/importers/picture/pictureHeader.ts';
import { readFound } from '../../src/importers/readFound.ts';
import { usualBecomes } from '../../src/importers/usualBecomes.ts';
import { addHardware } from '../../src/site/edits/addHardware.ts';
import { addShots } from '../../src/site/edits/addShots.ts';
import { addTownRule } from '../../src/site/edits/addTownRule.ts';
import { bringIn } from '../../src/site/edits/bringIn.ts';
import { drawLot } from '../../src/site/edits/drawLot.ts';
import { emptySite } from '../../src/site/emptySite.ts';
import type { Found } from '../../src/site/found.ts';
import { openSite } from '../../src/site/openSite.ts';
import type { Site } from '../../src/site/site.ts';
import { usualHeights } from '../../src/trade/usualHeights.ts';
import { inches } from '../../src/units/inches.ts';
import { parseAngle } from '../../src/units/parseAngle.ts';
import { parseBearing } from '../../src/units/parseBearing.ts';
import { parseLandLength } from '../../src/units/parseLandLength.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { parseLengths } from '../../src/units/parseLengths.ts';
import { parseMoney } from '../../src/units/parseMoney.ts';
import { parseParts } from '../../src/units/parseParts.ts';
import { parseRange } from '../../src/units/parseRange.ts';
import type { Parsed } from '../../src/units/parsed.ts';
import type { Kind } from './seeds.ts';

/** What a reader made of bytes: the sites that came of it, whether it took anything, and every line that it told. */
export interface Taken {
  readonly opened: boolean;
  readonly sites: readonly Site[];
  readonly lines: readonly string[];
}

type Reader = (bytes: Uint8Array) => Taken | Promise<Taken>;

const empty = emptySite({ specs: {}, hardware: {} });

const refused = (reason: string): Taken => ({ opened: false, sites: [], lines: [reason] });

const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

const siteOf = (parsed: Parsed<Site>): Taken =>
  parsed.ok ? { opened: true, sites: [parsed.value], lines: [] } : refused(parsed.reason);

/** An edit of what was read; one that cannot be done says so in the line of a RangeError of ours. */
const edited = (edit: () => Site, lines: readonly string[]): Taken => {
  try {
    return { opened: true, sites: [edit()], lines };
  } catch (error) {
    if (error instanceof RangeError)
      return { opened: false, sites: [], lines: [...lines, error.message] };
    throw error;
  }
};

const toldOf = ({ told, refused: all }: Found): readonly string[] => [
  ...told,
  ...all.map(({ where, reason }) => `${where}: ${reason}`),
];

const fence = usualSpec(inches(48));
const utility = { width: inches(2), tolerance: inches(24) };

/** A file of others, brought onto an empty yard as the program offers it. */
const found =
  (name: string | null): Reader =>
  async (bytes) => {
    const how = { unit: null, usual: 'feet', order: null, origin: null } as const;
    const read = await readFound({ name, bytes, ...how });
    if (!read.ok) return refused(read.reason);
    const becomes = Object.fromEntries(
      read.value.groups.map((one) => [one.key, usualBecomes(one)]),
    );
    const choices = { becomes, fence, utility, heights: usualHeights, chord: inches(1) };
    return edited(() => bringIn(empty, read.value, choices), toldOf(read.value));
  };

const rowLines = (rows: readonly { readonly line: number; readonly reason: string }[]): string[] =>
  rows.map(({ line, reason }) => `line ${line}: ${reason}`);

const shots: Reader = (bytes) => {
  const read = shotsFromCsv(textOf(bytes), { shots: [], system: 'feet' });
  if (!read.ok) return refused(read.reason);
  const { taken, refused: rows, units } = read.value;
  return edited(
    () =>
      addShots(
        empty,
        taken.map(({ shot }) => shot),
      ),
    [units, ...rowLines(rows)],
  );
};

const prices: Reader = (bytes) => {
  const read = pricesFromCsv(textOf(bytes));
  if (!read.ok) return refused(read.reason);
  const { hours, rock, refused: rows } = read.value;
  if (![...hours.values(), rock ?? 0].every(Number.isFinite)) throw new Error('hours without end');
  return { opened: true, sites: [], lines: rowLines(rows) };
};

const fresh = <Id extends string>(stem: string): (() => Id) => {
  let count = 0;
  return () => `${stem}:new-${(count += 1)}` as Id;
};

const hardware: Reader = (bytes) => {
  const read = bookFromCsv(textOf(bytes), { book: {}, freshId: fresh('hardware') });
  if (!read.ok) return refused(read.reason);
  const { added, refused: rows } = read.value;
  const taken = () => added.reduce((so, { id, entry }) => addHardware(so, id, entry), empty);
  return edited(taken, rowLines(rows));
};

const townRules: Reader = (bytes) => {
  const read = townRulesFromCsv(textOf(bytes), { book: {}, freshId: fresh('town-rule') });
  if (!read.ok) return refused(read.reason);
  const { added, refused: rows } = read.value;
  const taken = () => added.reduce((so, { id, entry }) => addTownRule(so, entry, id), empty);
  return edited(taken, rowLines(rows));
};

const sheet: Reader = async (bytes) => {
  const inside = await siteInPdf(bytes);
  if (inside.is === 'site') return siteOf(inside.site);
  return { opened: false, sites: [], lines: inside.is === 'foreign' ? [inside.why] : [] };
};

const picture: Reader = (bytes) => {
  const read = pictureHeader(bytes);
  if (!read.ok) return refused(read.reason);
  const { width, height } = read.value;
  if (!(width > 0 && height > 0)) throw new Error(`a picture of ${width} × ${height}`);
  return { opened: true, sites: [], lines: [] };
};

const deed: Reader = (bytes) => {
  const calls = readCalls(textOf(bytes));
  if (!calls.ok) return refused(calls.reason);
  const told = traverse(calls.value);
  const lines = calls.value.pieces.flatMap(({ found: one, doubts }) =>
    one.kind === 'fault' ? [one.reason, ...doubts] : doubts,
  );
  const points = lotPoints(told, calls.value.start, 1 / 2);
  const closed = told.lot !== null;
  return edited(() => drawLot(empty, { label: 'Lot', closed, points }, { x: 0, y: 0 }), lines);
};

const figures: readonly ((text: string) => Parsed<unknown>)[] = [
  parseLength,
  (text) => parseLength(text, 'm'),
  parseLengths,
  parseRange,
  parseAngle,
  parseBearing,
  parseLandLength,
  parseMoney,
  parseParts,
];

const figure: Reader = (bytes) => {
  const all = figures.map((read) => read(textOf(bytes)));
  const numbers = all.flatMap((one) =>
    one.ok && typeof one.value === 'number' ? [one.value] : [],
  );
  if (!numbers.every(Number.isFinite)) throw new Error('a number without end');
  const lines = all.flatMap((one) => (one.ok ? [] : [one.reason]));
  return { opened: all.some(({ ok }) => ok), sites: [], lines };
};

/** What the program does with bytes of each kind when somebody gives them to it. */
export const readers: Readonly<Record<Kind, Reader>> = {
  'site file': (bytes) => siteOf(openSite(textOf(bytes))),
  'crew sheet': sheet,
  GeoJSON: found('a.geojson'),
  DXF: found('a.dxf'),
  points: found('a.csv'),
  'grade shots': shots,
  'price list': prices,
  'hardware book': hardware,
  'town rules': townRules,
  picture,
  deed,
  figure,
};
