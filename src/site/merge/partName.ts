import type { Feature } from '../feature.ts';
import type { Site } from '../site.ts';
import type { PartKind } from './part.ts';

/** What a part of each kind is called, before its name. */
const nouns: Readonly<Record<PartKind, string>> = {
  marks: 'Mark',
  lines: 'Fence line',
  gates: 'Gate',
  features: 'Feature',
  pins: 'Post set by hand',
  shots: 'Grade shot',
  observations: 'Reading',
  acceptances: 'Accepted flag',
  townRules: 'Rule of a town',
  alternatives: 'Alternative',
  offcuts: 'Length from the yard',
  underlays: 'Picture',
  pictures: 'Picture kept in the file',
  specs: 'Fence build',
  hardware: 'Part',
  corners: 'corner',
  leaves: 'leaf',
  notes: 'Line of the level notes',
  job: 'Job',
  lengths: 'Lengths',
  shop: 'Shop',
  counting: 'Counting',
  work: 'Work',
  levels: 'Level notes',
  trusts: 'Trust in readings',
  conditions: 'Ground and wind',
  origin: 'Place on earth',
};

const featureNouns: Readonly<Record<Feature['kind'], string>> = {
  building: 'Building',
  paving: 'Paving',
  pool: 'Pool',
  'keep-out': 'Keep-out',
  boundary: 'Boundary',
  'height zone': 'Height zone',
  utility: 'Utility',
  tree: 'Tree',
  note: 'Note',
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
  return name === '' ? id.slice(id.indexOf(':') + 1) : name;
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

const readings: Readonly<Record<string, string>> = {
  tape: 'Tape',
  square: 'Square corner',
  straight: 'Marks in line',
  offset: 'Offset',
  parallel: 'Equal offsets',
  bearing: 'Bearing',
  fix: 'Fix',
};

const readingName = (site: Site, entry: Entry | undefined, id: string): string => {
  if (entry === undefined) return `${nouns.observations} ${id.slice(id.indexOf(':') + 1)}`;
  const [at, from, to] = ['at', 'from', 'to'].map((role) =>
    nameOfId(site, String(entry[role] ?? '')),
  );
  const noun = readings[String(entry['kind'])] ?? nouns.observations;
  if (entry['kind'] === 'fix') return `${noun} of ${nameOfId(site, String(entry['mark']))}`;
  return `${noun}${at === '' ? '' : ` at ${at}`} from ${from} to ${to}`;
};

/** What a part of a site is called in a line, such as `Gate Walk gate` or `Fence line Back, corner M3`. */
export const partName = (site: Site, key: string): string => {
  const words = key.split(' ');
  const [kind, id] = [words[0] as PartKind, words.at(-1) ?? ''];
  if (words.length === 1) return nouns[kind];
  if (words.length > 2) {
    const owner = words.slice(1, -1).join(' ');
    const own = kind === 'leaves' ? leafName(site, owner, id) : cornerName(site, owner, id);
    return `${partName(site, owner)}, ${nouns[kind]} ${own}`;
  }
  const entry = entryIn(site, kind, id);
  if (kind === 'observations') return readingName(site, entry, id);
  if (kind === 'pins')
    return `${nouns.pins} on fence line ${nameOfId(site, String(entry?.['line'] ?? ''))}`;
  if (kind === 'acceptances') return `${nouns.acceptances}: ${String(entry?.['rule'] ?? '')}`;
  const noun = kind === 'features' ? featureNouns[entry?.['kind'] as Feature['kind']] : nouns[kind];
  return `${noun ?? nouns[kind]} ${nameIn(site, kind, id)}`;
};

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
