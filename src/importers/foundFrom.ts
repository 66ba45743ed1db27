import { farthest } from '../geometry/tolerance.ts';
import type { Found, FoundPath, FoundRefusal } from '../site/found.ts';
import type { Origin } from '../site/origin.ts';
import { phrase } from '../phrases/phrase.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { cleanPath } from './cleanPath.ts';
import type { Drawn } from './drawn.ts';
import { inchesIn, type FileUnit } from './fileUnit.ts';
import { fileUnitWords } from './fileUnitWords.ts';
import { grouped } from './grouped.ts';
import { joined } from './joined.ts';
import { nearby } from './nearby.ts';

/** How things of a file become what can stand on a site. */
export interface FoundBy {
  readonly unit: FileUnit;
  /** Whether lines that meet end to end on a layer are one line. */
  readonly lines: 'joined' | 'apart';
  /** Where on earth 0, 0 is; what has a place on earth is never moved. */
  readonly origin: Origin | null;
  readonly told: readonly string[];
  readonly refused: readonly FoundRefusal[];
  /** The line for a file that has nothing. */
  readonly none: string;
}

/** By how many of its unit a file is moved: a round number, so that a person can take it off again. */
const roundStep = 1000;

/** A thing without corners on one spot; unread for one without length, or higher than a site can hold. */
const clean = (one: Drawn): Parsed<Drawn> => {
  if (one.kind === 'point' && Math.abs(one.z ?? 0) > farthest) {
    return unread(phrase`lies over 10 miles above or below 0`);
  }
  if (!('path' in one)) return read(one);
  if (!one.path.bows.every((bow) => Math.abs(bow) <= farthest))
    return unread(phrase`has a curve of over 10 miles`);
  const path = cleanPath(one.path);
  return path.ok ? read({ ...one, path: path.value }) : path;
};

const cleaned = (drawn: readonly Drawn[]) => {
  const refused: FoundRefusal[] = [];
  const kept = drawn.flatMap((one): Drawn[] => {
    const found = clean(one);
    if (found.ok) return [found.value];
    refused.push({ where: one.where, reason: found.reason });
    return [];
  });
  return { kept, refused };
};

/** The open lines of each layer joined; all else as it was. */
const withJoined = (drawn: readonly Drawn[]): readonly Drawn[] => {
  const isLine = (one: Drawn) => 'path' in one && !one.path.closed;
  const layers = new Map<string, FoundPath[]>();
  for (const one of drawn) {
    if (!('path' in one) || one.path.closed) continue;
    const own = layers.get(one.layer);
    if (own === undefined) layers.set(one.layer, [one.path]);
    else own.push(one.path);
  }
  const lines = [...layers].flatMap(([layer, paths]) =>
    joined(paths).map((path): Drawn => ({ kind: 'path', layer, where: layer, path })),
  );
  return [...drawn.filter((one) => !isLine(one)), ...lines];
};

const countOf = (drawn: readonly Drawn[]): number => drawn.filter((one) => 'path' in one).length;

/** With commas, and past a million million by its power of ten. */
const number = (value: number): string =>
  Math.abs(value) < 1e12 ? value.toLocaleString('en-US') : value.toExponential(3);

/**
 * What a file has, by layer and shape, near to 0, 0 and without corners on one spot. What cannot stand
 * on a site is refused, each with its place in the file. Unread with one line where nothing can.
 */
export const foundFrom = (drawn: readonly Drawn[], by: FoundBy): Parsed<Found> => {
  const near = nearby(drawn, by.origin === null ? roundStep * inchesIn[by.unit] : null);
  const { kept, refused } = cleaned(near.drawn);
  const whole = by.lines === 'joined' ? withJoined(kept) : kept;
  const told = [...by.told];
  if (near.refused.length > 0) {
    const [some, all] = [number(near.drawn.length), number(drawn.length)];
    told.push(
      phrase`Kept what lies together: ${some} of ${all} things; the others lie over 10 miles off`,
    );
  }
  if (near.moved !== null) {
    const { x, y } = near.moved;
    const inUnit = (one: number): string => number(Math.round(one / inchesIn[by.unit]));
    const [east, north] = [inUnit(x), inUnit(y)];
    told.push(
      phrase`Moved: 0, 0 is here ${east} east, ${north} north in the file, in ${fileUnitWords[by.unit]}`,
    );
  }
  if (countOf(whole) < countOf(kept)) {
    told.push(
      phrase`${number(countOf(kept))} lines, joined where they meet, are ${number(countOf(whole))}`,
    );
  }
  const all = [...by.refused, ...near.refused, ...refused];
  const [first] = all;
  if (whole.length > 0) {
    return read({ groups: grouped(whole), told, refused: all, origin: by.origin });
  }
  return unread(first === undefined ? by.none : phrase`${first.where}: ${first.reason}`);
};
