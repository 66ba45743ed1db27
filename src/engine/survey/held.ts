import { boundsOf } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import { bodyOf, type Board, type Part } from './bodies.ts';
import { covarianceOf, datumBy, type Datum } from './datum.ts';
import { majorAxis, spreads, type Covariance } from './ellipse.ts';
import { movesBeside } from './motion.ts';
import type { Places } from './rows.ts';
import { wellKnown } from './wellKnown.ts';

/** A mark that is not held to the body, and the directions in which it is loose: one or two unit vectors. */
export interface LooseMark {
  readonly mark: MarkId;
  readonly ways: readonly SitePoint[];
}

/** What holds in a site, and what does not. */
export interface Held {
  readonly parts: readonly Part[];
  /** The body that all else is held to or loose from; null where nothing holds. */
  readonly body: Board | null;
  /** What its places are told from; null without a body. */
  readonly datum: Datum | null;
  readonly loose: readonly LooseMark[];
}

/** A foot, inches. */
const foot = 12;

/**
 * Who may be off by more than a foot (one standard deviation) is not held, nor, of a large network, by
 * more than a 400th of its extent: a mile of tapes end to end is no better than that. Ours, no
 * published source.
 */
const heldWithin = (places: Places): number => {
  const box = boundsOf([...places.values()]);
  const extent = box === null ? 0 : Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
  return Math.max(foot, extent / 400);
};

const everyWay: readonly SitePoint[] = [
  { x: 1, y: 0 },
  { x: 0, y: 1 },
];

/** Below this share of the larger one the smaller of two spreads is rounding. */
const trace = 1e-9;

/** Along which axes of a covariance more is open than so many inches. */
const openWays = (covariance: Covariance, within: number): readonly SitePoint[] => {
  const [large, small] = spreads(covariance);
  if (large <= within ** 2) return [];
  return small > within ** 2 ? everyWay : [majorAxis(covariance)];
};

/** The ways in which a mark that is not of the body is free, to the first order. */
const freeWays = (part: Part | undefined, mark: MarkId, body: Board | null) => {
  if (part === undefined) return everyWay;
  const known = body?.base ?? null;
  const base = known !== null && part.places.has(known[0]) ? known : null;
  const moves = movesBeside(part.motions, mark, base, part.places);
  const sum = (of: (move: SitePoint) => number): number =>
    moves.reduce((all, move) => all + of(move), 0);
  const squares = {
    xx: sum(({ x }) => x * x),
    xy: sum(({ x, y }) => x * y),
    yy: sum(({ y }) => y * y),
  };
  const [large, small] = spreads(squares);
  return large === 0 || small > trace * large ? everyWay : [majorAxis(squares)];
};

/** A datum, and how well each of its marks is known from it. */
interface Firm {
  readonly datum: Datum;
  readonly known: ReadonlyMap<MarkId, Covariance>;
}

const covarianceAt = (datum: Datum, mark: MarkId): Covariance =>
  covarianceOf(datum, [{ mark, share: 1 }]);

const firmBy = (datum: Datum, within: number): Firm => {
  const well = wellKnown(datum, within);
  const known = [...datum.by].map(
    (mark) => [mark, well.get(mark) ?? covarianceAt(datum, mark)] as const,
  );
  return { datum, known: new Map(known) };
};

/**
 * The datum of a body by those of its marks that are held themselves: the worst are left out of it
 * until all that are in it are known, so that one mark that hardly hangs on does not blur the others.
 */
const firmDatum = (parts: readonly Part[], body: Board, within: number): Firm => {
  let firm = firmBy(datumBy(parts, body, body.marks), within);
  while (firm.known.size > 2 && !body.fast) {
    const sized = [...firm.known].map(([mark, covariance]) => {
      const [large] = spreads(covariance);
      return { mark, size: Math.sqrt(large) };
    });
    const worst = Math.max(...sized.map(({ size }) => size));
    if (worst <= within) break;
    const most = Math.max(within, worst / 2);
    const kept = sized.filter(({ size }) => size <= most).map(({ mark }) => mark);
    if (kept.length < 2) break;
    firm = firmBy(datumBy(parts, body, new Set(kept)), within);
  }
  return firm;
};

/**
 * What holds among marks (inches, where they stand): the body, and of all the others, and of those of
 * the body that are known too badly, which way they are loose.
 */
export const heldAmong = (
  marks: Places,
  parts: readonly Part[],
  fixed: readonly MarkId[],
): Held => {
  const body = bodyOf(parts, fixed);
  const within = heldWithin(marks);
  const firm = body === null ? null : firmDatum(parts, body, within);
  const partOf = new Map(
    parts.flatMap((part) =>
      [...part.strength.frame.columns.keys()].map((id) => [id, part] as const),
    ),
  );
  const loose = [...marks.keys()].flatMap((mark): LooseMark[] => {
    if (firm === null || body?.marks.has(mark) !== true)
      return [{ mark, ways: freeWays(partOf.get(mark), mark, body) }];
    const ways = openWays(firm.known.get(mark) ?? covarianceAt(firm.datum, mark), within);
    return ways.length === 0 ? [] : [{ mark, ways }];
  });
  return { parts, body, datum: firm?.datum ?? null, loose };
};
