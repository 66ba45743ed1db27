import type { Part, Parts } from './part.ts';
import { innerParts } from './innerParts.ts';
import { refsOf } from './refsOf.ts';
import { same } from './same.ts';

/** The ids that one document gets in place of its own: of entries by their key, of corners by theirs. */
export type Fresh = ReadonlyMap<string, string>;

/** The parts of three documents that both copies came from and are. */
export interface CopyParts {
  readonly base: Parts;
  readonly first: Parts;
  readonly second: Parts;
}

/** Ids that a document gave by counting. Others come from a book and name the same thing everywhere. */
const counted = ({ id }: Part): boolean => /^[a-z-]+:[0-9]+$/.test(id);

const wholeOf = (parts: Parts, key: string): Part[] => {
  const part = parts.get(key);
  return part === undefined ? [] : [part, ...(innerParts(parts).get(key) ?? [])];
};

/** What both copies have anew under one key and by itself. */
const bothNew = ({ base, first, second }: CopyParts): string[] =>
  [...second.values()].flatMap((part) => {
    const key = part.owner === '' ? `${part.kind} ${part.id}` : '';
    return part.id !== '' && first.has(key) && !base.has(key) ? [key] : [];
  });

/**
 * What both copies have anew under one id that is not one thing: it says something else, or leans on such
 * a thing.
 */
const otherThings = (copies: CopyParts): Set<string> => {
  const { first, second } = copies;
  const twice = bothNew(copies).filter((key) => {
    const part = second.get(key);
    return part !== undefined && counted(part);
  });
  const other = new Set(twice.filter((key) => !same(wholeOf(first, key), wholeOf(second, key))));
  for (let more = true; more;) {
    const leaning = twice.filter(
      (key) =>
        !other.has(key) &&
        wholeOf(second, key).some((part) => refsOf(part).some((on) => other.has(on))),
    );
    leaning.forEach((key) => other.add(key));
    more = leaning.length > 0;
  }
  return other;
};

/** Corners of the second copy whose id the first one gave to another corner. */
const otherCorners = ({ base, first, second }: CopyParts, other: ReadonlySet<string>): Part[] => {
  const invented = new Set(
    [...first].flatMap(([key, part]) =>
      part.kind === 'corners' && !base.has(key) ? [part.id] : [],
    ),
  );
  return [...second].flatMap(([key, part]) => {
    if (part.kind !== 'corners' || base.has(key) || !invented.has(part.id)) return [];
    const twin = first.get(key);
    const apart = other.has(part.owner) || refsOf(part).some((on) => other.has(on));
    return twin !== undefined && !apart && same(twin.fields, part.fields) ? [] : [part];
  });
};

/** Tapes by the two marks between which they were read, where there is one for those two. */
const tapesBetween = (parts: Parts, besides: Parts): ReadonlyMap<string, Part> => {
  const found = new Map<string, Part | null>();
  for (const [key, part] of parts) {
    if (part.kind !== 'observations') continue;
    const read = part.fields['read'] as Readonly<Record<string, unknown>>;
    if (read['kind'] !== 'tape') continue;
    const between = [String(read['from']), String(read['to'])].toSorted().join(' ');
    found.set(between, found.has(between) || besides.has(key) ? null : part);
  }
  return new Map(
    [...found].flatMap(([key, part]) => (part === null ? [] : [[key, part] as const])),
  );
};

/** Tapes that both pulled anew between the same two marks are one tape that was read twice. */
const sameTapes = ({ base, first, second }: CopyParts, other: ReadonlySet<string>): Fresh => {
  const [one, two] = [tapesBetween(first, base), tapesBetween(second, base)];
  return new Map(
    [...two].flatMap(([between, part]) => {
      const twin = one.get(between);
      if (twin === undefined || refsOf(part).some((on) => other.has(on))) return [];
      return [[`observations ${part.id}`, twin.id] as const];
    }),
  );
};

const kindOf = (id: string): string => id.slice(0, id.indexOf(':'));

/** Gives ids that no document uses, the smallest number first. */
const giver = (copies: CopyParts): ((like: string) => string) => {
  const used = new Set(
    [copies.base, copies.first, copies.second].flatMap((parts) =>
      [...parts.values()].map(({ id }) => id),
    ),
  );
  const last = new Map<string, number>();
  return (like) => {
    const kind = kindOf(like);
    let number = (last.get(kind) ?? 0) + 1;
    while (used.has(`${kind}:${number}`)) number += 1;
    last.set(kind, number);
    return `${kind}:${number}`;
  };
};

/**
 * What the second copy calls by an id that the first one gave to something else, and the id that it gets
 * instead, so that no id means two things. Things that both have anew and alike are one. Nothing where the
 * base is not known: an id then means one thing.
 */
export const freshIds = (copies: CopyParts): Fresh => {
  const other = otherThings(copies);
  const tapes = sameTapes(copies, other);
  const give = giver(copies);
  const entries = [...other].filter((key) => !tapes.has(key));
  return new Map([
    ...tapes,
    ...entries.map((key) => [key, give(key.slice(key.indexOf(' ') + 1))] as const),
    ...otherCorners(copies, other).map(
      (part) => [`${part.kind} ${part.owner} ${part.id}`, give(part.id)] as const,
    ),
  ]);
};
