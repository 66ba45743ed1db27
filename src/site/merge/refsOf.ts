import type { Part } from './part.ts';

/** The name of the map that ids of a kind are kept in, where a part may lean on one. */
const mapOf: Readonly<Record<string, string>> = {
  mark: 'marks',
  line: 'lines',
  feature: 'features',
  spec: 'specs',
  hardware: 'hardware',
  picture: 'pictures',
};

const keyOfId = (id: unknown): string[] => {
  if (typeof id !== 'string') return [];
  const map = mapOf[id.slice(0, id.indexOf(':'))];
  return map === undefined ? [] : [`${map} ${id}`];
};

const valueOf = (from: unknown, name: string): unknown =>
  typeof from === 'object' && from !== null ? (from as Record<string, unknown>)[name] : undefined;

const leafHinges = (closes: unknown): unknown[] =>
  Object.values((valueOf(closes, 'leaves') ?? {}) as Record<string, unknown>).map((leaf) =>
    valueOf(leaf, 'hinge'),
  );

const idsIn = ({ kind, fields }: Part): unknown[] => {
  switch (kind) {
    case 'corners':
      return [fields['mark']];
    case 'lines':
      return [fields['spec'], valueOf(fields['follows'], 'feature')];
    case 'features':
      return [fields['mark']];
    case 'gates': {
      const { place, closes, latch, closer } = fields;
      return [
        valueOf(place, 'line'),
        latch,
        valueOf(closes, 'latch'),
        closer,
        ...leafHinges(closes),
      ];
    }
    case 'leaves':
      return [fields['hinge']];
    case 'pins':
      return [valueOf(fields['place'], 'line')];
    case 'observations': {
      const roles = ['from', 'to', 'at', 'other', 'mark'];
      return roles.map((role) => valueOf(fields['read'], role));
    }
    case 'alternatives':
      return Object.entries(fields).flatMap(([name, by]) =>
        name.startsWith('instead ') && by !== undefined ? [name.slice('instead '.length), by] : [],
      );
    case 'underlays':
      return [valueOf(fields['lies'], 'picture')];
    default:
      return [];
  }
};

/** The keys of the parts that a part leans on: it cannot stand in a document without them. */
export const refsOf = (part: Part): string[] => idsIn(part).flatMap(keyOfId);

/** The key of the line that a gate or pin stands on; null for any other part. */
export const lineUnder = ({ kind, fields }: Part): string | null => {
  if (kind !== 'gates' && kind !== 'pins') return null;
  const line = valueOf(fields['place'], 'line');
  return typeof line === 'string' ? `lines ${line}` : null;
};
