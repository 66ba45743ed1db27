import type { Feature } from '../feature.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { Gate } from '../gate.ts';
import type { VertexId } from '../ids.ts';
import { mapNames } from '../limits.ts';
import type { Path } from '../path.ts';
import type { Site } from '../site.ts';
import { besideReading, groups } from './groups.ts';
import { keyOf, singleKinds, type Fields, type Part, type PartKind, type Parts } from './part.ts';

type Entry = Readonly<Record<string, unknown>>;

const without = (entry: Entry, names: readonly string[]): Entry =>
  Object.fromEntries(Object.entries(entry).filter(([name]) => !names.includes(name)));

const only = (entry: Entry, names: readonly string[]): Entry =>
  Object.fromEntries(Object.entries(entry).filter(([name]) => names.includes(name)));

/** The fields of an entry, those of a group as one. */
const fieldsOf = (kind: PartKind, entry: Entry): Fields => {
  const own = Object.entries(groups[kind] ?? {}).filter(([, names]) =>
    names.every((name) => Object.hasOwn(entry, name)),
  );
  const grouped = own.flatMap(([, names]) => names);
  const together = own.map(([name, names]) => [name, only(entry, names)] as const);
  return { ...without(entry, grouped), ...Object.fromEntries(together) };
};

const cornersOf = (owner: string, path: Path, notes: Partial<FenceLine>): Part[] => {
  const { stepped, curved, walls } = notes;
  return (Object.entries(path) as [VertexId, Path[VertexId]][]).map(([id, vertex]) => ({
    kind: 'corners',
    owner,
    id,
    fields: {
      ...vertex,
      ...(stepped?.[id] === undefined ? {} : { stepped: stepped[id] }),
      ...(curved?.[id] === undefined ? {} : { curved: curved[id] }),
      ...(walls?.[id] === undefined ? {} : { wall: walls[id] }),
    },
  }));
};

const linePartsOf = (id: string, line: FenceLine): Part[] => {
  const { path, stepped, curved, walls, ...fields } = line;
  const part: Part = { kind: 'lines', owner: '', id, fields };
  return [part, ...cornersOf(keyOf(part), path, { stepped, curved, walls })];
};

const featurePartsOf = (id: string, feature: Feature): Part[] => {
  if (!('path' in feature)) return [{ kind: 'features', owner: '', id, fields: feature }];
  const { path, ...fields } = feature;
  const part: Part = { kind: 'features', owner: '', id, fields };
  return [part, ...cornersOf(keyOf(part), path, {})];
};

const gatePartsOf = (id: string, gate: Gate, whole: ReadonlySet<string>): Part[] => {
  if (whole.has(id))
    return [{ kind: 'gates', owner: '', id, fields: fieldsOf('gates', { ...gate }) }];
  const { leaves, ...rest } = gate;
  const part: Part = { kind: 'gates', owner: '', id, fields: fieldsOf('gates', rest) };
  const owner = keyOf(part);
  return [
    part,
    ...Object.entries(leaves).map(([leaf, fields]): Part => ({
      kind: 'leaves',
      owner,
      id: leaf,
      fields: fieldsOf('leaves', fields),
    })),
  ];
};

/** The entries of a map within an entry as fields of it, each under the map's name and its own. */
const spread = (entry: Entry, map: string): Entry => {
  const inner = Object.entries(entry[map] ?? {}).map(
    ([name, value]) => [`${map} ${name}`, value] as const,
  );
  return { ...without(entry, [map]), ...Object.fromEntries(inner) };
};

const entryPartsOf = (kind: (typeof mapNames)[number], id: string, entry: Entry): Part[] => {
  const part = (fields: Fields): Part[] => [{ kind, owner: '', id, fields }];
  if (kind === 'alternatives') return part(spread(entry, 'instead'));
  if (kind !== 'observations') return part(fieldsOf(kind, entry));
  return part({ ...only(entry, besideReading), read: without(entry, besideReading) });
};

const singlePartsOf = (site: Site): Part[] =>
  singleKinds.map((kind) => {
    const part = (fields: Fields): Part => ({ kind, owner: '', id: '', fields });
    if (kind === 'origin') return part({ at: site.origin });
    if (kind === 'levels') return part({ allowable: site.levels.allowable });
    if (kind === 'counting') return part(spread(spread(site.counting, 'times'), 'spares'));
    return part(fieldsOf(kind, site[kind]));
  });

/**
 * A document taken apart into what two people can change apart. Of the gates in `whole` what closes them is
 * one field with their leaves; of the others each leaf is a part of its own.
 */
export const partsOf = (site: Site, whole: ReadonlySet<string>): Parts => {
  const parts = [
    ...singlePartsOf(site),
    ...Object.entries(site.levels.notes).map(([id, fields]): Part => ({
      kind: 'notes',
      owner: '',
      id,
      fields,
    })),
    ...mapNames.flatMap((kind) =>
      Object.entries<unknown>(site[kind]).flatMap(([id, entry]): Part[] => {
        if (kind === 'lines') return linePartsOf(id, entry as FenceLine);
        if (kind === 'features') return featurePartsOf(id, entry as Feature);
        if (kind === 'gates') return gatePartsOf(id, entry as Gate, whole);
        return entryPartsOf(kind, id, entry as Entry);
      }),
    ),
  ];
  return new Map(parts.map((part) => [keyOf(part), part]));
};
