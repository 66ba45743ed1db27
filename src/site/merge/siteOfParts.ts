import { mapNames } from '../limits.ts';
import type { Lineage } from '../lineage.ts';
import { siteVersion } from '../site.ts';
import { groups } from './groups.ts';
import { keyOf, type Part, type Parts } from './part.ts';

type Entry = Record<string, unknown>;

/** An entry out of its fields: groups are what they are made of, maps within it are maps again. */
const entryOf = ({ kind, fields }: Part, maps: readonly string[] = []): Entry => {
  const together = kind === 'observations' ? { read: [] } : (groups[kind] ?? {});
  const entry: Entry = Object.fromEntries(maps.map((map) => [map, {}]));
  for (const [name, value] of Object.entries(fields)) {
    const map = maps.find((one) => name.startsWith(`${one} `));
    if (map !== undefined) (entry[map] as Entry)[name.slice(map.length + 1)] = value;
    else if (Object.hasOwn(together, name)) Object.assign(entry, value);
    else entry[name] = value;
  }
  return entry;
};

const pathOf = (corners: readonly Part[]): Entry =>
  Object.fromEntries(
    corners.map(({ id, fields }) => [id, { mark: fields['mark'], order: fields['order'] }]),
  );

/** What is said of single legs, by the corners at which they start. */
const notesOf = (corners: readonly Part[], field: string): Entry =>
  Object.fromEntries(
    corners.flatMap(({ id, fields }) =>
      fields[field] === undefined ? [] : [[id, fields[field]] as const],
    ),
  );

const lineOf = (part: Part, corners: readonly Part[]): Entry => ({
  ...entryOf(part),
  path: pathOf(corners),
  stepped: notesOf(corners, 'stepped'),
  curved: notesOf(corners, 'curved'),
  walls: notesOf(corners, 'wall'),
});

const gateOf = (part: Part, leaves: readonly Part[]): Entry => {
  const gate = entryOf(part);
  return Object.hasOwn(gate, 'leaves')
    ? gate
    : { ...gate, leaves: Object.fromEntries(leaves.map((leaf) => [leaf.id, entryOf(leaf)])) };
};

const madeOf = (part: Part, inner: readonly Part[]): Entry => {
  switch (part.kind) {
    case 'lines':
      return lineOf(part, inner);
    case 'features':
      return Object.hasOwn(part.fields, 'mark')
        ? entryOf(part)
        : { ...entryOf(part), path: pathOf(inner) };
    case 'gates':
      return gateOf(part, inner);
    case 'alternatives':
      return entryOf(part, ['instead']);
    case 'counting':
      return entryOf(part, ['times', 'spares']);
    default:
      return entryOf(part);
  }
};

/** A document put together again of its parts, coming from where it is said to: nothing is checked, what opens it does that. */
export const siteOfParts = (parts: Parts, lineage: Lineage): unknown => {
  const inner = new Map<string, Part[]>();
  for (const part of parts.values()) {
    if (part.owner !== '') inner.set(part.owner, [...(inner.get(part.owner) ?? []), part]);
  }
  const site: Entry = { format: 'lathline site', version: siteVersion, lineage };
  for (const name of mapNames) site[name] = {};
  const notes: Entry = {};
  for (const part of parts.values()) {
    if (part.owner !== '') continue;
    const made = madeOf(part, inner.get(keyOf(part)) ?? []);
    if (part.kind === 'notes') notes[part.id] = made;
    else if (part.id !== '') (site[part.kind] as Entry)[part.id] = made;
    else site[part.kind] = part.kind === 'origin' ? made['at'] : made;
  }
  site['levels'] = { ...(site['levels'] as Entry | undefined), notes };
  return site;
};
