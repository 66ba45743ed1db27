import { anchoredAt } from '../../../src/site/anchor.ts';
import type { Gate, Leaf } from '../../../src/site/gate.ts';
import type { LeafId } from '../../../src/site/ids.ts';
import { legAt } from '../../../src/site/legGround.ts';
import { legTrack } from '../../../src/site/legTrack.ts';
import { inOrder } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { perpendicular } from '../../../src/geometry/perpendicular.ts';
import { scale } from '../../../src/geometry/scale.ts';
import { unitVector } from '../../../src/geometry/unitVector.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';

/** A gate told by the ground alone: no word of starts, ends, left or right. Inches. */
export interface GroundedGate {
  /** What its anchor holds. */
  readonly spot: SitePoint;
  /** From there to the rest of the gate; nothing when the anchor holds its middle. */
  readonly into: SitePoint;
  /** The way its leaves open. */
  readonly opens: SitePoint;
  /** From the latch to the hinged post. */
  readonly hinged: SitePoint;
  /** For each leaf the way from the gate's middle; a single leaf is in the middle. */
  readonly leaves: Readonly<Record<LeafId, SitePoint>>;
}

export const gateOnGround = (site: Site, gate: Gate): GroundedGate => {
  const line = site.lines[gate.line];
  if (line === undefined) throw new Error(`no ${gate.line}`);
  const leg = legTrack(site, line, legAt(line, gate.leg));
  const way = unitVector(leg.start, leg.end) ?? { x: 0, y: 0 };
  const sorted = inOrder<LeafId, Leaf>(gate.leaves);
  const off = { start: 1, end: -1, middle: 0 }[gate.anchor.from];
  return {
    spot: anchoredAt(gate.anchor, leg),
    into: scale(way, off),
    opens: scale(perpendicular(way), gate.opens === 'left' ? 1 : -1),
    hinged: scale(way, gate.hingedAt === 'start' ? -1 : 1),
    leaves: Object.fromEntries(
      sorted.map(({ id }, n) => [id, scale(way, n - (sorted.length - 1) / 2)]),
    ),
  };
};

/** Every number of a value, for comparing two of them within a tolerance. */
export const numbersOf = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value)
    .toSorted()
    .flatMap((key) => numbersOf((value as Record<string, unknown>)[key]));
};

/** The largest difference between the numbers of two values of one shape. */
export const apart = (a: unknown, b: unknown): number => {
  const [left, right] = [numbersOf(a), numbersOf(b)];
  if (left.length !== right.length) return Infinity;
  return Math.max(0, ...left.map((number, n) => Math.abs(number - (right[n] ?? Infinity))));
};
