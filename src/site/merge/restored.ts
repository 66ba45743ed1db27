import { innerParts } from './innerParts.ts';
import { keyOf, type Part, type Parts } from './part.ts';
import { lineUnder, refsOf } from './refsOf.ts';

/** Where something that is leaned on is looked for, the likelier first. */
type Sources = readonly Parts[];

const bringBack = (parts: Map<string, Part>, sources: Sources, key: string): Part[] => {
  const source = sources.find((from) => from.has(key));
  const part = source?.get(key);
  if (source === undefined || part === undefined) return [];
  const whole = [part, ...(innerParts(source).get(key) ?? [])];
  const fresh = whole.filter((one) => !parts.has(keyOf(one)));
  fresh.forEach((one) => parts.set(keyOf(one), one));
  return fresh;
};

/** A gate or pin whose line is gone stands where the other copy has it, if its line is still there. */
const stoodElsewhere = (parts: Parts, sources: Sources, part: Part): Part => {
  const line = lineUnder(part);
  if (line === null || parts.has(line)) return part;
  const places = sources.flatMap((from) => from.get(keyOf(part)) ?? []);
  const other = places.find((place) => parts.has(lineUnder(place) ?? ''));
  return other === undefined
    ? part
    : { ...part, fields: { ...part.fields, place: other.fields['place'] } };
};

/** Lines that something stands on and that have no leg left get back the corners that they had under it. */
const withLegs = (parts: Map<string, Part>, sources: Sources): Part[] => {
  const stood = new Set([...parts.values()].flatMap((part) => lineUnder(part) ?? []));
  const inner = innerParts(new Map(parts));
  return [...stood].flatMap((line) => {
    if ((inner.get(line) ?? []).length > 1) return [];
    const had = sources
      .map((from) => innerParts(from).get(line) ?? [])
      .find((corners) => corners.length > 1);
    const fresh = (had ?? []).filter((one) => !parts.has(keyOf(one)));
    fresh.forEach((one) => parts.set(keyOf(one), one));
    return fresh;
  });
};

/**
 * Brings back what parts lean on and the other copy took out since nothing of its own needed it: marks, fence
 * builds, hinges and latches, lines and features with their corners. Adds only; `parts` is written to.
 */
export const restoreMissing = (parts: Map<string, Part>, sources: Sources): void => {
  for (const [key, part] of parts) {
    const placed = stoodElsewhere(parts, sources, part);
    if (placed !== part) parts.set(key, placed);
  }
  let open: readonly Part[] = [...parts.values()];
  while (open.length > 0) {
    const missing = new Set(open.flatMap(refsOf).filter((key) => !parts.has(key)));
    open = [...missing].flatMap((key) => bringBack(parts, sources, key));
    if (open.length === 0) open = withLegs(parts, sources);
  }
};
