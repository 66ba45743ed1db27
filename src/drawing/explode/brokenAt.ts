import { boundsOf, boundsOverlap, type Bounds } from '../../geometry/bounds.ts';
import { corners, type OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { outlineBounds } from '../inkedBounds.ts';
import type { Outline, Step } from '../outline.ts';
import { onArc, onPiece } from './onPiece.ts';
import { pathPieces, type PathPiece } from './pathPieces.ts';
import { sharesInBox } from './sharesInBox.ts';

/** A line ends so far before the letters that it is broken for, paper inches. */
const usualClear = 0.02;
/** Arcs are broken piece by piece, each no longer than this, paper inches, and in no more than so many. */
const longest = 0.02;
const mostPieces = 2000;

const nowhere: Bounds = { minX: 0, minY: 0, maxX: 0, maxY: 0 };

/** What lines are broken for: the room round some letters. */
export type Breaks = readonly {
  readonly box: OrientedBox<'paper'>;
  readonly bounds: Bounds;
}[];

/** The room round letters that lines are broken for: their boxes, and a little more (`clear`, paper inches). */
export const breaksFor = (boxes: readonly OrientedBox<'paper'>[], clear = usualClear): Breaks =>
  boxes.map((own) => {
    const { centre, angle } = own;
    const [halfWidth, halfHeight] = [own.halfWidth + clear, own.halfHeight + clear];
    const box = { centre, halfWidth, halfHeight, angle };
    return { box, bounds: boundsOf(corners(box)) ?? nowhere };
  });

type Shares = readonly [number, number];

/** What is left of some shares where a cut is taken out. */
const without = (left: readonly Shares[], [low, high]: Shares): Shares[] =>
  left.flatMap(([from, to]): Shares[] => {
    const before: Shares[] = low > from ? [[from, Math.min(to, low)]] : [];
    const after: Shares[] = high < to ? [[Math.max(from, high), to]] : [];
    return [...before, ...after];
  });

const whole: readonly Shares[] = [[0, 1]];

/** The shares of a straight piece that lie in no box, rising. */
const straightLeft = (a: PaperPoint, b: PaperPoint, breaks: Breaks): readonly Shares[] => {
  const [minX, minY] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  const [maxX, maxY] = [Math.max(a.x, b.x), Math.max(a.y, b.y)];
  let left = whole;
  for (const { box, bounds } of breaks) {
    // most are off to one side
    if (minX > bounds.maxX || maxX < bounds.minX) continue;
    if (minY > bounds.maxY || maxY < bounds.minY) continue;
    const cut = sharesInBox(a, b, box);
    if (cut !== null) left = without(left, cut);
  }
  return left;
};

/** The shares of an arc that lie in no box, rising: those of its short pieces that are whole. */
const arcLeft = (
  { step, long }: Extract<PathPiece, { kind: 'arc' }>,
  breaks: Breaks,
): readonly Shares[] => {
  const count = Math.min(mostPieces, Math.max(1, Math.ceil(long / longest)));
  const left: [number, number][] = [];
  let here = onArc(step, 0);
  for (let n = 0; n < count; n++) {
    const [from, to] = [n / count, (n + 1) / count];
    const there = onArc(step, to);
    const [rest] = straightLeft(here, there, breaks);
    here = there;
    if (rest === undefined || rest[0] > 0 || rest[1] < 1) continue;
    const last = left.at(-1);
    if (last !== undefined && last[1] === from) last[1] = to;
    else left.push([from, to]);
  }
  return left;
};

const stepTo = (go: 'move' | 'line', { x, y }: PaperPoint): Step => ({ go, x, y });

/** A part of a piece as a step of an outline. */
const stepOf = (piece: PathPiece, [from, to]: Shares): Step => {
  if (piece.kind === 'straight') return stepTo('line', onPiece(piece, to));
  const { start, sweep } = piece.step;
  return { ...piece.step, start: start + from * sweep, sweep: (to - from) * sweep };
};

/** The rest of an outline: what nothing is cut away between goes on in one. */
const brokenOutline = (outline: Outline, breaks: Breaks): Outline => {
  const rest: Step[] = [];
  let joined = false;
  for (const piece of pathPieces(outline)) {
    if (piece.begins === 'anew') joined = false;
    const left =
      piece.kind === 'arc' ? arcLeft(piece, breaks) : straightLeft(piece.from, piece.to, breaks);
    for (const shares of left) {
      if (!joined || shares[0] > 0) rest.push(stepTo('move', onPiece(piece, shares[0])));
      rest.push(stepOf(piece, shares));
    }
    joined = left.at(-1)?.[1] === 1;
  }
  return rest;
};

/**
 * Atoms with their lines broken for letters, as a draughtsman breaks a line for its name: nothing of a
 * stroke lies in a box. What is filled stays; a stroke that no box is near stays as it was.
 */
export const brokenAt = (atoms: readonly Atom[], breaks: Breaks): readonly Atom[] => {
  if (breaks.length === 0) return atoms;
  return atoms.flatMap((atom): readonly Atom[] => {
    if (atom.do === 'clip') return [{ ...atom, atoms: brokenAt(atom.atoms, breaks) }];
    if (atom.do !== 'stroke') return [atom];
    const around = outlineBounds(atom.outline);
    const near =
      around === null ? [] : breaks.filter(({ bounds }) => boundsOverlap(bounds, around));
    if (near.length === 0) return [atom];
    const outline = brokenOutline(atom.outline, near);
    return outline.length === 0 ? [] : [{ ...atom, outline }];
  });
};
