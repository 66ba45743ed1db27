import type { Gate } from '../../site/gate.ts';
import { defaultGapUnder } from '../../trade/gapUnder.ts';
import type { Inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import type { Ground } from '../ground/groundOf.ts';
import { leafBottom } from '../ground/leafBottom.ts';
import type { LeafClearance } from '../ground/leafClearance.ts';
import { rollClearance } from '../ground/rollClearance.ts';
import { turnClearance } from '../ground/turnClearance.ts';
import type { GateLayout } from '../layout.ts';

/** The room under one leaf of a gate through its whole movement. */
export interface LeafRoom extends LeafClearance {
  /** 0 for the leaf nearer to the start of the leg. */
  readonly leaf: number;
  /** The same turned to the other side of the fence; null for a leaf that rolls. */
  readonly otherWay: LeafClearance | null;
}

/**
 * How high the bottom of a gate's leaves hangs over the ground at the higher of its posts, inches;
 * where nobody has said it, as high as gates may at most.
 */
export const bottomOf = ({ bottom }: Pick<Gate, 'bottom'>): Inches =>
  bottom ?? defaultGapUnder.length;

/**
 * The room under every leaf of a gate over the ground that the shots describe: leaves hang level,
 * over the ground at the higher of their two posts. None where the ground at a post is not known.
 */
export const leafRooms = (gate: Gate, laid: GateLayout, ground: Ground): readonly LeafRoom[] => {
  const level = leafBottom(ground, [laid.start, laid.end], bottomOf(gate));
  if (level === null || !laid.placed) return [];
  const bottom = { near: level, far: level };
  const turning = laid.leaves.map((leaf, n): LeafRoom => ({
    leaf: n,
    ...turnClearance(ground, leaf, bottom),
    otherWay: turnClearance(ground, { ...leaf, turns: radians(-leaf.turns) }, bottom),
  }));
  const rolling = laid.slides.map((slide, n): LeafRoom => ({
    leaf: n,
    ...rollClearance(ground, slide, level),
    otherWay: null,
  }));
  return [...turning, ...rolling];
};
