import type { Infill } from '../../../site/infill.ts';
import type { Atom } from '../../atom.ts';
import { circleOutline, rectangleOutline, segmentsOutline } from '../../explode/polylineOutline.ts';
import { fenceOutline } from '../../explode/fenceOutline.ts';
import type { Ink } from '../../ink.ts';
import { pens, type PenName } from '../../pens.ts';

/** A sign of the plan, drawn about the middle of its left edge, and what it stands for. */
export interface KeyEntry {
  readonly sign: readonly Atom[];
  readonly text: string;
  /** The longest that the text may become, where it is not known yet. */
  readonly longest?: string;
}

/** How wide a sign is, paper inches. */
export const signWidth = 0.5;

const ends = [
  { x: 0, y: 0 },
  { x: signWidth, y: 0 },
] as const;

/** A line of a pen. */
export const lineSign = (name: PenName): Atom[] => [
  { do: 'stroke', pen: pens[name], outline: segmentsOutline([ends]) },
];

/** Ground of an ink with the edge of a pen. */
export const groundSign = (ink: Ink, opacity: number, name: PenName): Atom[] => {
  const outline = rectangleOutline({ x: 0, y: -0.07 }, signWidth, 0.14);
  return [
    { do: 'fill', ink, opacity, outline },
    { do: 'stroke', pen: pens[name], outline },
  ];
};

/** Fence with one thing or another between its posts. */
export const fenceSign = (of: Infill['kind']): Atom[] => [
  { do: 'stroke', pen: pens.fence, outline: fenceOutline(ends, false, { of, window: null }) },
];

/** A post in its hole. */
export const postSign = (): Atom[] => {
  const middle = { x: signWidth / 2, y: 0 };
  return [
    { do: 'stroke', pen: pens.thin, outline: circleOutline(middle, 0.062) },
    { do: 'fill', ink: 'post', opacity: 1, outline: circleOutline(middle, 0.034) },
  ];
};
