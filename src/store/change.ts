import { isPlain } from '../site/isPlain.ts';
import { kept } from '../site/kept.ts';

/** One field of a document that was written: where it is, what was there and what is; left out for nothing. */
export interface FieldChange {
  readonly at: readonly string[];
  readonly was?: unknown;
  readonly is?: unknown;
}

/** All that differs between a document and the one before it. */
export type Change = readonly FieldChange[];

/** A document as the device keeps it: plain JSON of whatever version of the file format. */
export type KeptDocument = Readonly<Record<string, unknown>>;

const fieldOf = (value: KeptDocument, key: string): unknown =>
  Object.hasOwn(value, key) ? value[key] : undefined;

const walk = (at: readonly string[], was: unknown, is: unknown): Change => {
  if (Object.is(was, is)) return [];
  if (isPlain(was) && isPlain(is)) {
    const keys = new Set([...Object.keys(was), ...Object.keys(is)]);
    return [...keys].flatMap((key) => walk([...at, key], fieldOf(was, key), fieldOf(is, key)));
  }
  if (was !== undefined && is !== undefined && kept(was, is) === was) return [];
  return [{ at, ...(was !== undefined && { was }), ...(is !== undefined && { is }) }];
};

/**
 * What was written to make one document of another, by entity and field: objects are compared field by
 * field, all else is written whole. Parts that both share are not looked at.
 */
export const changeBetween = (before: KeptDocument, after: KeptDocument): Change =>
  walk([], before, after);

interface Writing {
  readonly at: readonly string[];
  readonly to: unknown;
}

const written = (value: unknown, writings: readonly Writing[]): KeptDocument => {
  const next: Record<string, unknown> = isPlain(value) ? { ...value } : {};
  const deeper = new Map<string, Writing[]>();
  for (const { at, to } of writings) {
    const [key = '', ...rest] = at;
    if (rest.length > 0) {
      const inner = deeper.get(key) ?? [];
      inner.push({ at: rest, to });
      deeper.set(key, inner);
    } else if (to === undefined) delete next[key];
    else next[key] = to;
  }
  for (const [key, inner] of deeper) next[key] = written(next[key], inner);
  return next;
};

/** Which way a change is gone along: to the later document or back to the earlier. */
export type Way = 'forth' | 'back';

/** The document on the other side of a change; it shares all that the change does not name. */
export const across = (document: KeptDocument, change: Change, way: Way): KeptDocument =>
  change.length === 0
    ? document
    : written(
        document,
        change.map(({ at, was, is }) => ({ at, to: way === 'forth' ? is : was })),
      );

/** About so many bytes a value takes on the device: the characters of its JSON. */
export const bytesOf = (value: unknown): number => JSON.stringify(value)?.length ?? 0;
