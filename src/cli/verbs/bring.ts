import { usualSpec } from '../../engine/usualSpec.ts';
import type { PointOrder } from '../../importers/csv/pointColumns.ts';
import { pointOrders } from '../../importers/csv/pointColumns.ts';
import { fileUnits, type FileUnit } from '../../importers/fileUnit.ts';
import { readFound } from '../../importers/readFound.ts';
import { usualBecomes } from '../../importers/usualBecomes.ts';
import { usualUnit } from '../../importers/usualUnit.ts';
import { offers, type Becomes } from '../../site/becomes.ts';
import { bringIn } from '../../site/edits/bringIn.ts';
import { emptySite } from '../../site/emptySite.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Found, FoundGroup } from '../../site/found.ts';
import type { SpecId } from '../../site/ids.ts';
import { saveSite } from '../../site/saveSite.ts';
import type { Site } from '../../site/site.ts';
import { usualHeights } from '../../trade/usualHeights.ts';
import { defaultToleranceZone } from '../../trade/toleranceZones.ts';
import { inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { valueOf, valuesOf, type Call } from '../call.ts';
import { choiceOf } from '../choiceOf.ts';
import { columns } from '../columns.ts';
import type { Io } from '../io.ts';
import { readDocument } from '../readSite.ts';
import type { Answer, Verb } from '../verb.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Straight pieces of curves lie no farther inside them than this. */
const chord = inches(1);
const width = inches(2);

const countOf = (group: FoundGroup): number =>
  'paths' in group ? group.paths.length : group.points.length;

/** A group by its layer, by its shape, or by both: `WALLS`, `areas`, `WALLS/areas`. */
const isNamed = ({ layer, shape }: FoundGroup, name: string): boolean =>
  [layer, shape, `${layer}/${shape}`].some((one) => one.toLowerCase() === name.toLowerCase());

const withChoice = (
  found: Found,
  becomes: Record<string, Becomes>,
  text: string,
): Parsed<Record<string, Becomes>> => {
  const at = text.lastIndexOf('=');
  const [name, kind] = [text.slice(0, at), text.slice(at + 1).trim()];
  const named = found.groups.filter((group) => isNamed(group, name.trim()));
  if (at < 0 || named.length === 0) {
    const layers = [...new Set(found.groups.map(({ layer }) => layer))].slice(0, 12).join(', ');
    return unread(
      phrase`--as: ${quotedText(text)}: expected LAYER=KIND for a layer of the file: ${layers}`,
    );
  }
  const taking = named.filter(({ shape }) => offers[shape].some((offer) => offer === kind));
  if (taking.length === 0) {
    const kinds = [...new Set(named.flatMap(({ shape }) => offers[shape]))].join('; ');
    return unread(phrase`--as: ${quotedText(text)}: expected one of ${kinds}`);
  }
  return read({
    ...becomes,
    ...Object.fromEntries(taking.map(({ key }) => [key, kind as Becomes])),
  });
};

const choicesOf = (call: Call, found: Found): Parsed<Record<string, Becomes>> => {
  const usual = Object.fromEntries(found.groups.map((group) => [group.key, usualBecomes(group)]));
  return valuesOf(call, 'as').reduce<Parsed<Record<string, Becomes>>>(
    (so, text) => (so.ok ? withChoice(found, so.value, text) : so),
    read(usual),
  );
};

/** What fence lines are built as: the first build of the site, else the usual 4 ft one. */
const fenceOf = (site: Site): { id: SpecId; spec: FenceSpec } => {
  const [first] = Object.entries<FenceSpec>(site.specs);
  return first === undefined ? usualSpec(inches(48)) : { id: first[0] as SpecId, spec: first[1] };
};

const standardInput = '-';

const nameOf = (path: string): string => (path === standardInput ? phrase`standard input` : path);

const stemOf = (path: string): string => path.replace(/^.*[/\\]/, '').replace(/\.[^.]*$|^-$/, '');

const siteFor = async (call: Call, io: Io): Promise<Parsed<Site>> => {
  const into = valueOf(call, 'into');
  if (into === standardInput && call.places[0] === standardInput) {
    return unread(phrase`--into: “-”: expected another file, since FILE is standard input`);
  }
  if (into !== null) return readDocument(io, into);
  const site = emptySite({ specs: {}, hardware: {} });
  return read({ ...site, job: { ...site.job, name: stemOf(call.places[0] ?? '').slice(0, 200) } });
};

const foundFor = async (call: Call, io: Io, site: Site): Promise<Parsed<Found>> => {
  const path = call.places[0] ?? standardInput;
  const unit = choiceOf<FileUnit>(call, 'unit', fileUnits);
  if (!unit.ok) return unit;
  const order = choiceOf<PointOrder>(call, 'order', pointOrders);
  if (!order.ok) return order;
  const bytes = await io.readBytes(path);
  if (!bytes.ok) return bytes;
  const usual = usualUnit(site.lengths.system);
  const { origin } = site;
  const how = { unit: unit.value, usual, order: order.value, origin };
  const name = path === standardInput ? null : path;
  const found = await readFound({ name, bytes: bytes.value, ...how });
  return found.ok ? found : unread(`${nameOf(path)}: ${found.reason}`);
};

const bringing = (site: Site, found: Found, becomes: Record<string, Becomes>): Parsed<Site> => {
  if (Object.values(becomes).every((one) => one === 'leave out')) {
    const groups = found.groups.map((group) => `${group.layer}/${group.shape}`).slice(0, 12);
    return unread(
      phrase`nothing is chosen: expected --as LAYER=KIND for one of ${groups.join(', ')}`,
    );
  }
  const utility = { width, tolerance: defaultToleranceZone.length };
  try {
    const how = { becomes, fence: fenceOf(site), utility, heights: usualHeights, chord };
    return read(bringIn(site, found, how));
  } catch (error) {
    if (error instanceof RangeError) return unread(error.message);
    throw error;
  }
};

const linesOf = (found: Found, becomes: Readonly<Record<string, Becomes>>): string[] => [
  ...columns(
    found.groups.map((group) => [
      `  ${group.layer}/${group.shape}`,
      String(countOf(group)),
      becomes[group.key] ?? 'leave out',
    ]),
    ['left', 'right', 'left'],
  ),
  ...found.told.map((line) => `  ${line}`),
  ...found.refused.map(({ where, reason }) => `  ${phrase`left out: ${where}: ${reason}`}`),
];

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const out = valueOf(call, 'out');
  if (out !== null && !/[^/\\]\.json$/i.test(out)) {
    return unread(phrase`--out: ${quotedText(out)}: expected a file name that ends in .json`);
  }
  const before = await siteFor(call, io);
  if (!before.ok) return before;
  const found = await foundFor(call, io, before.value);
  if (!found.ok) return found;
  const becomes = choicesOf(call, found.value);
  if (!becomes.ok) return becomes;
  const site = bringing(before.value, found.value, becomes.value);
  if (!site.ok) return unread(`${nameOf(call.places[0] ?? standardInput)}: ${site.reason}`);
  const text = saveSite(site.value);
  const { told, refused } = found.value;
  const groups = found.value.groups.map((group) => {
    const { key, layer, shape } = group;
    return { layer, shape, count: countOf(group), becomes: becomes.value[key] };
  });
  const json = { groups, told, refused, site: site.value };
  if (out === null) return read({ text, json, stopped: false });
  const file = await io.writeFile(out, text);
  if (!file.ok) return file;
  const lines = [phrase`${file.value}: a site file`, ...linesOf(found.value, becomes.value)];
  return read({ text: lines.join('\n'), json: { file: file.value, ...json }, stopped: false });
};

const option = { needed: false, repeats: false };

/** `bring`: a GeoJSON, DXF or list of points to a site file, or onto one. */
export const bring: Verb = {
  name: 'bring',
  does: phrase`brings a GeoJSON, DXF or list of points onto a site`,
  places: ['FILE'],
  options: [
    {
      ...option,
      name: 'into',
      value: 'SITE',
      does: phrase`the site to bring it onto; else a new one`,
    },
    {
      ...option,
      name: 'out',
      value: 'FILE.json',
      does: phrase`the site file to write; else it is printed`,
    },
    {
      ...option,
      name: 'as',
      value: 'LAYER=KIND',
      repeats: true,
      does: phrase`what a layer becomes, or a shape: areas, holes, lines, points, heights, texts`,
    },
    { ...option, name: 'unit', value: fileUnits.join('|'), does: phrase`the unit of its numbers` },
    {
      ...option,
      name: 'order',
      value: pointOrders.join('|'),
      does: phrase`columns without headings`,
    },
  ],
  run,
};
