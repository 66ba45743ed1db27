import type { SitePoint } from '../../geometry/point.ts';
import type { GateId, MarkId, ObservationId } from '../../site/ids.ts';
import type { Inches } from '../../units/inches.ts';
import type { Body } from './bodies.ts';

/**
 * How one observation agrees with all the others. Lengths in inches, angles in radians, as the kind of
 * the observation has it.
 */
export interface Reading {
  /** What the marks have as they stand, less what was read. */
  readonly residual: number;
  /** How much of an error in it the others would show: 0 nothing, 1 all of it. */
  readonly redundancy: number;
  /** The residual over its own standard deviation; null where nothing else tells of it. */
  readonly standardised: number | null;
}

/** Readings of which one is most likely wrong, and what all the others say instead. */
export interface Suspect {
  /** More than one where they cannot be told apart. */
  readonly ids: readonly ObservationId[];
  /** What the first of them would read by all the others; inches or radians. */
  readonly expects: number;
  /** Standard deviation of that. */
  readonly give: number;
}

/** What was observed on a site, and what it says of itself. */
export interface Survey {
  readonly readings: Readonly<Record<ObservationId, Reading>>;
  /** Marks that something was observed of, fixes aside. */
  readonly taped: readonly MarkId[];
  /** Marks of fence and of what was observed that nothing holds in their place to the rest. */
  readonly loose: readonly MarkId[];
  /** Which way each of these is loose: a unit vector, or two for every way. */
  readonly ways: Readonly<Record<MarkId, readonly SitePoint[]>>;
  /** The most marks that are held to each other, three or more; null for none. */
  readonly body: Body | null;
  /**
   * How far off the middle of each opening may be on the ground, told from the body: one standard deviation
   * the way that is known worst, inches. None for a gate on a loose mark.
   */
  readonly places: Readonly<Record<GateId, Inches>>;
  /** The gravest first; empty where nothing disagrees. */
  readonly suspects: readonly Suspect[];
  /** Whether more readings disagree than these: five of a network are named, of a very large one fewer. */
  readonly more: boolean;
  /** The tape that would help most; null where none would. */
  readonly helps: { readonly from: MarkId; readonly to: MarkId } | null;
  /** Observations more than are needed: degrees of freedom. */
  readonly spare: number;
  /**
   * The sum of squares of the residuals, each over its sigma: over `spare` it is the variance factor, near
   * 1 where all readings are as good as they are trusted to be.
   */
  readonly squares: number;
  /** Whether the marks have come to rest where the readings put them; a sketch far off may keep them from it. */
  readonly settled: boolean;
  /**
   * `sketched`: nothing was taped; `large`: too many marks to say; `disagrees`: a reading cannot be right; `loose`: marks are not held;
   * `unchecked`: all is held and a wrong reading somewhere would not show; `held`: all is held, checked
   * and in agreement.
   */
  readonly stands: 'sketched' | 'large' | 'disagrees' | 'loose' | 'unchecked' | 'held';
}

/** Nothing observed: what a site without observations has. */
export const unsurveyed: Survey = {
  readings: {},
  taped: [],
  loose: [],
  ways: {},
  body: null,
  places: {},
  suspects: [],
  more: false,
  helps: null,
  spare: 0,
  squares: 0,
  settled: true,
  stands: 'sketched',
};
