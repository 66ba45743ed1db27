import type { Primitive } from '../../drawing/primitive.ts';
import { addFeature } from '../../site/edits/addFeature.ts';
import type { FeatureFields } from '../../site/feature.ts';
import { nextId } from '../../site/nextId.ts';
import type { Plans } from '../../store/plans.ts';
import { ghostMark } from '../ghostPiece.ts';
import { pointerOf } from '../pointer.ts';
import type { Pointer } from '../pointer.ts';
import type { Tool } from '../tool.ts';
import { phrase } from '../../phrases/phrase.ts';
import { theThing, type Thing } from '../theThing.ts';

/** A feature that stands at one mark of its own. */
export interface SpotKind {
  /** What the hand calls it. */
  readonly noun: Thing;
  readonly fields: (plans: Plans) => FeatureFields;
  /** Inches on the ground round the mark that it takes up. */
  readonly radius: (plans: Plans) => number;
}

/** idle --press--> idle. It keeps only where the hand is. */
export interface SpotState {
  readonly pointer: Pointer;
}

/** The tool that sets one kind of feature at each press, where the hand is and nowhere else. */
export const placeSpot = ({ noun, fields, radius }: SpotKind): Tool<SpotState> => ({
  idle: { pointer: null },
  on: (before, input, desk) => {
    const state: SpotState = { pointer: pointerOf(input, before.pointer) };
    if (input.do !== 'press') return { state };
    return {
      state,
      commit: {
        site: addFeature(desk.site, fields(desk.plans), [input.at]),
        label: phrase`Set ${theThing[noun]}`,
      },
      select: { kind: 'feature', id: nextId(desk.site, 'feature') },
    };
  },
  preview: ({ pointer }, { plans }) => {
    if (pointer === null) return [];
    const ring: Primitive = {
      kind: 'circle',
      centre: pointer.at,
      radius: radius(plans),
      least: 0.08,
      pen: 'ghost',
      ink: null,
    };
    return [ring, ghostMark(pointer.at)];
  },
  prompt: () => phrase`Tap where the ${theThing[noun]} is`,
  rest: () => ({ pointer: null }),
});
