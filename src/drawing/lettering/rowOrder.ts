import { radians } from '../../units/radians.ts';
import type { Beside, Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { besideRoom, besideShift } from './besideShift.ts';
import { usualCost, weigh, type Enough } from './coverCost.ts';
import { labelBox, labelSize, type Label } from './label.ts';
import type { Lettering } from './lettering.ts';
import { runsTogether } from './runsTogether.ts';

type TextPrimitive = Extract<Primitive, { kind: 'text' }>;

/** So much worse for each text of the row are places along it, and those on its other side. */
const worse = [0, 0.1, 0.1, 0.4, 0.4, 0.4] as const;
const upright = radians(0);
const natural = worse.map((_, n) => n);

const anything: Enough = { cost: usualCost, limit: 0 };

const isClear = (room: Pick<Lettering, 'isFree' | 'covers'>, box: Label['box']): boolean => {
  return weigh(room.covers(box, anything), usualCost) === 0 && room.isFree(box);
};

/**
 * The order in which every text of a row tries its places beside its point, as places in the list
 * of `besideShift`: first the one where the row as a whole is clearest, so that it stands on one
 * side at one distance.
 */
export const rowOrder = (
  row: readonly TextPrimitive[],
  projection: Projection,
  room: Pick<Lettering, 'sees' | 'isFree' | 'covers'>,
): readonly number[] => {
  const shown = row.flatMap((text) => {
    const at = toPaper(projection, text.at);
    if (text.beside === undefined || !room.sees(at) || runsTogether(text, projection)) return [];
    const size = labelSize(text);
    return [{ size, at, beside: besideRoom(text, text.beside, size, projection) }];
  });
  // how bad a place is for the whole row
  const costAt = (n: number): number =>
    shown.reduce((sum, { size, at, beside }) => {
      const { x, y } = besideShift(beside, n);
      const box = labelBox(size, { x: at.x + x, y: at.y + y }, upright);
      return sum + (isClear(room, box) ? 0 : 1) + (worse[n] ?? 0);
    }, 0);
  // nothing beats the first place where hardly a text is in the way
  const first = costAt(0);
  if (first <= shown.length * worse[1]) return natural;
  const costs = natural.map((n) => (n === 0 ? first : costAt(n)));
  return natural.toSorted((a, b) => (costs[a] ?? 0) - (costs[b] ?? 0) || a - b);
};

/** The texts of a drawing that stand in rows, by the side that each row shares. */
export const rowsOf = (
  primitives: readonly Primitive[],
): ReadonlyMap<Beside, readonly TextPrimitive[]> => {
  const rows = new Map<Beside, TextPrimitive[]>();
  for (const one of primitives) {
    if (one.kind !== 'text' || one.beside === undefined) continue;
    const row = rows.get(one.beside);
    if (row === undefined) rows.set(one.beside, [one]);
    else row.push(one);
  }
  return rows;
};
