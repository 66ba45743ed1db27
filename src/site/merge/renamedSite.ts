import { mapNames, type MapName } from '../limits.ts';
import type { Site } from '../site.ts';
import type { Fresh } from './freshIds.ts';

type Entry = Readonly<Record<string, unknown>>;
type Rename = (id: string) => string;

/** What ids of each kind are filed under. */
const maps: Readonly<Record<string, MapName | 'notes'>> = {
  mark: 'marks',
  line: 'lines',
  gate: 'gates',
  feature: 'features',
  pin: 'pins',
  shot: 'shots',
  observation: 'observations',
  acceptance: 'acceptances',
  'town-rule': 'townRules',
  alternative: 'alternatives',
  offcut: 'offcuts',
  underlay: 'underlays',
  spec: 'specs',
  hardware: 'hardware',
  level: 'notes',
};

const withKeys = (
  map: unknown,
  rename: Rename,
  change: (entry: never, id: string) => unknown,
): Entry =>
  Object.fromEntries(
    Object.entries((map ?? {}) as Entry).map(([id, entry]) => [
      rename(id),
      change(entry as never, id),
    ]),
  );

const asItIs = (entry: never): unknown => entry;

/** The named fields of an entry that name something, by what that is called now. */
const withNames = (entry: Entry, names: readonly string[], rename: Rename): Entry =>
  Object.fromEntries(
    Object.entries(entry).map(([name, value]) => [
      name,
      names.includes(name) && typeof value === 'string' ? rename(value) : value,
    ]),
  );

/** How things are called now, each kind of name for itself. */
interface Names {
  readonly entry: Rename;
  /** Of a corner of what has this id in the document as it was. */
  readonly corner: (owner: string) => Rename;
  /** What a flag stands on, such as `leg vertex:3`. */
  readonly place: (on: string) => string;
}

const lineOf = (line: Entry, id: string, { entry, corner }: Names): Entry => {
  const vertex = corner(`lines ${id}`);
  const follows = line['follows'] as Entry | null;
  return {
    ...withNames(line, ['spec'], entry),
    path: withKeys(line['path'], vertex, (stop: Entry) => withNames(stop, ['mark'], entry)),
    stepped: withKeys(line['stepped'], vertex, asItIs),
    curved: withKeys(line['curved'], vertex, asItIs),
    walls: withKeys(line['walls'], vertex, asItIs),
    follows: follows === null ? null : withNames(follows, ['feature'], entry),
  };
};

const featureOf = (feature: Entry, id: string, { entry, corner }: Names): Entry => {
  const named = withNames(feature, ['mark'], entry);
  if (!Object.hasOwn(feature, 'path')) return named;
  const path = withKeys(feature['path'], corner(`features ${id}`), (stop: Entry) =>
    withNames(stop, ['mark'], entry),
  );
  return { ...named, path };
};

const standingOf = (thing: Entry, { entry, corner }: Names): Entry => ({
  ...thing,
  line: entry(String(thing['line'])),
  leg: corner(`lines ${String(thing['line'])}`)(String(thing['leg'])),
});

const gateOf = (gate: Entry, names: Names): Entry => ({
  ...withNames(standingOf(gate, names), ['latch', 'closer'], names.entry),
  leaves: withKeys(
    gate['leaves'],
    (id) => id,
    (leaf: Entry) => withNames(leaf, ['hinge'], names.entry),
  ),
});

const entryOf = (map: MapName, entry: Entry, id: string, names: Names): Entry => {
  switch (map) {
    case 'lines':
      return lineOf(entry, id, names);
    case 'features':
      return featureOf(entry, id, names);
    case 'gates':
      return gateOf(entry, names);
    case 'pins':
      return standingOf(entry, names);
    case 'observations':
      return withNames(entry, ['from', 'to', 'at', 'other', 'mark'], names.entry);
    case 'acceptances':
      return { ...entry, on: names.place(String(entry['on'])) };
    case 'alternatives':
      return {
        ...entry,
        instead: withKeys(entry['instead'], names.entry, (by: string) => names.entry(by)),
      };
    default:
      return entry;
  }
};

const namesFrom = (fresh: Fresh): Names => {
  const entry: Rename = (id) => fresh.get(`${maps[id.slice(0, id.indexOf(':'))]} ${id}`) ?? id;
  const corners = [...fresh].filter(([key]) => key.startsWith('corners '));
  const legs = new Map(corners.map(([key, id]) => [key.slice(key.lastIndexOf(' ') + 1), id]));
  return {
    entry,
    corner: (owner) => (id) => fresh.get(`corners ${owner} ${id}`) ?? id,
    place: (on) => {
      const at = on.indexOf(' ');
      const id = on.slice(at + 1);
      return at < 0 ? on : `${on.slice(0, at)} ${legs.get(id) ?? entry(id)}`;
    },
  };
};

/** A document in which things have other ids, and everything that names them follows. Nothing else changes. */
export const renamedSite = (site: Site, fresh: Fresh): Site => {
  if (fresh.size === 0) return site;
  const names = namesFrom(fresh);
  const renamed = mapNames.map((map) => [
    map,
    withKeys(site[map], names.entry, (entry: Entry, id) => entryOf(map, entry, id, names)),
  ]);
  const notes = withKeys(site.levels.notes, names.entry, asItIs) as Site['levels']['notes'];
  const levels = { ...site.levels, notes };
  return { ...site, ...(Object.fromEntries(renamed) as Partial<Site>), levels };
};
