import type { Feature } from '../feature.ts';
import type { ObservationId } from '../ids.ts';
import type { Observation } from '../observation.ts';
import type { Site } from '../site.ts';
import { asItIs, joined, phrase } from '../../phrases/phrase.ts';
import type { PartKind } from './part.ts';

/** What a part of each kind is called, before its name. */
const nouns: Readonly<Record<PartKind, (name: string) => string>> = {
  marks: (name) => phrase`Mark ${name}`,
  lines: (name) => phrase`Fence line ${name}`,
  gates: (name) => phrase`Gate ${name}`,
  features: (name) => phrase`Feature ${name}`,
  pins: (name) => phrase`Post set by hand ${name}`,
  shots: (name) => phrase`Grade shot ${name}`,
  observations: (name) => phrase`Reading ${name}`,
  acceptances: (name) => phrase`Accepted flag: ${name}`,
  townRules: (name) => phrase`Rule of a town ${name}`,
  alternatives: (name) => phrase`Alternative ${name}`,
  offcuts: (name) => phrase`Length from the yard ${name}`,
  underlays: (name) => phrase`Picture ${name}`,
  pictures: (name) => phrase`Picture kept in the file ${name}`,
  specs: (name) => phrase`Fence build ${name}`,
  hardware: (name) => phrase`Part ${name}`,
  corners: (name) => phrase`corner ${name}`,
  leaves: (name) => phrase`leaf ${name}`,
  notes: (name) => phrase`Line of the level notes ${name}`,
  job: () => phrase`Job`,
  lengths: () => phrase`Lengths`,
  shop: () => phrase`Shop`,
  counting: () => phrase`Counting`,
  work: () => phrase`Work`,
  levels: () => phrase`Level notes`,
  trusts: () => phrase`Trust in readings`,
  conditions: () => phrase`Ground and wind`,
  origin: () => phrase`Place on earth`,
};

const featureNouns: Readonly<Record<Feature['kind'], (name: string) => string>> = {
  building: (name) => phrase`Building ${name}`,
  paving: (name) => phrase`Paving ${name}`,
  pool: (name) => phrase`Pool ${name}`,
  'keep-out': (name) => phrase`Keep-out ${name}`,
  boundary: (name) => phrase`Boundary ${name}`,
  'height zone': (name) => phrase`Height zone ${name}`,
  utility: (name) => phrase`Utility ${name}`,
  tree: (name) => phrase`Tree ${name}`,
  note: (name) => phrase`Note ${name}`,
};

type Entry = Readonly<Record<string, unknown>>;

const entryIn = (site: Site, kind: string, id: string): Entry | undefined => {
  const map =
    kind === 'notes' ? site.levels.notes : (site as unknown as Record<string, unknown>)[kind];
  return typeof map === 'object' && map !== null && Object.hasOwn(map, id)
    ? (map as Readonly<Record<string, Entry>>)[id]
    : undefined;
};

/** The name that a person gave an entry on one line, else what its id ends with. */
const nameIn = (site: Site, kind: string, id: string): string => {
  const entry = entryIn(site, kind, id);
  const told = entry?.['label'] ?? entry?.['town'] ?? entry?.['point'] ?? entry?.['of'];
  const name = typeof told === 'string' ? told.replace(/\s+/g, ' ').trim() : '';
  return asItIs(name === '' ? id.slice(id.indexOf(':') + 1) : name);
};

const maps: Readonly<Record<string, string>> = {
  mark: 'marks',
  line: 'lines',
  gate: 'gates',
  feature: 'features',
  spec: 'specs',
  hardware: 'hardware',
  alternative: 'alternatives',
};

/** What an id names, as people call it: its name, else what the id ends with. */
export const nameOfId = (site: Site, id: string): string => {
  const map = maps[id.slice(0, id.indexOf(':'))];
  return map === undefined ? id : nameIn(site, map, id);
};

/** Whether a text is an id of something that has a name. */
export const isId = (text: string): boolean =>
  /^[a-z-]+:\S+$/.test(text) && text.slice(0, text.indexOf(':')) in maps;

const cornerName = (site: Site, owner: string, id: string): string => {
  const [kind = '', of = ''] = owner.split(' ');
  const path = entryIn(site, kind, of)?.['path'] as Readonly<Record<string, Entry>> | undefined;
  const mark = path?.[id]?.['mark'];
  return typeof mark === 'string' ? nameIn(site, 'marks', mark) : id.slice(id.indexOf(':') + 1);
};

const leafName = (site: Site, owner: string, id: string): string => {
  const gate = entryIn(site, 'gates', owner.slice('gates '.length));
  const leaves = Object.entries((gate?.['leaves'] ?? {}) as Readonly<Record<string, Entry>>);
  const row = leaves.toSorted(([, a], [, b]) => (String(a['order']) < String(b['order']) ? -1 : 1));
  return String(row.findIndex(([leaf]) => leaf === id) + 1);
};

/** A reading by its kind, from one mark to another; `at` is null where it is about no third one. */
const readings: Readonly<
  Record<
    Exclude<Observation['kind'], 'fix'>,
    (at: string | null, from: string, to: string) => string
  >
> = {
  tape: (_, from, to) => phrase`Tape from ${from} to ${to}`,
  square: (at, from, to) => phrase`Square corner at ${at ?? ''} from ${from} to ${to}`,
  straight: (at, from, to) => phrase`Marks in line at ${at ?? ''} from ${from} to ${to}`,
  offset: (at, from, to) => phrase`Offset at ${at ?? ''} from ${from} to ${to}`,
  parallel: (at, from, to) => phrase`Equal offsets at ${at ?? ''} from ${from} to ${to}`,
  bearing: (_, from, to) => phrase`Bearing from ${from} to ${to}`,
};

const readingName = (site: Site, id: string): string => {
  const seen = Object.hasOwn(site.observations, id)
    ? site.observations[id as ObservationId]
    : undefined;
  if (seen === undefined) return nouns.observations(id.slice(id.indexOf(':') + 1));
  if (seen.kind === 'fix') return phrase`Fix of ${nameOfId(site, seen.mark)}`;
  const at = 'at' in seen ? nameOfId(site, seen.at) : null;
  return readings[seen.kind](at, nameOfId(site, seen.from), nameOfId(site, seen.to));
};

/** What a part of a site is called in a line, such as `Gate Walk gate` or `Fence line Back, corner M3`. */
export const partName = (site: Site, key: string): string => {
  const words = key.split(' ');
  const [kind, id] = [words[0] as PartKind, words.at(-1) ?? ''];
  if (words.length === 1) return nouns[kind]('');
  if (words.length > 2) {
    const owner = words.slice(1, -1).join(' ');
    const own = kind === 'leaves' ? leafName(site, owner, id) : cornerName(site, owner, id);
    return joined([partName(site, owner), nouns[kind](own)], ', ');
  }
  const entry = entryIn(site, kind, id);
  if (kind === 'observations') return readingName(site, id);
  if (kind === 'pins')
    return phrase`Post set by hand on fence line ${nameOfId(site, String(entry?.['line'] ?? ''))}`;
  if (kind === 'acceptances') return nouns.acceptances(String(entry?.['rule'] ?? ''));
  const noun = kind === 'features' ? featureNouns[entry?.['kind'] as Feature['kind']] : nouns[kind];
  return (noun ?? nouns[kind])(nameIn(site, kind, id));
};

/** What something that stands in a row is called beside the others: a corner by its mark. */
export const nameInRow = (site: Site, key: string, id: string): string =>
  key.includes(' ') ? cornerName(site, key, id) : partName(site, `${key} ${id}`);

/** Whether a site has the part that a key names. */
export const hasPart = (site: Site, key: string): boolean => {
  const words = key.split(' ');
  if (words.length < 2) return true;
  const [kind = '', id = ''] = words.length === 2 ? words : words.slice(1);
  const entry = entryIn(site, kind, id);
  if (words.length === 2 || entry === undefined) return entry !== undefined;
  const inner = (entry['path'] ?? entry['leaves'] ?? {}) as object;
  return Object.hasOwn(inner, words.at(-1) ?? '');
};
