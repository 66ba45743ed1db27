import { inches } from '../../units/inches.ts';
import { fromDegrees, radians, type Radians } from '../../units/radians.ts';
import type { CurveTold } from './call.ts';
import { radiusOf, type CurveDegree } from './curveDegree.ts';
import { curveSlots, type CurveSlot } from './curveSlots.ts';
import type { Figure } from './figure.ts';

const compass: Readonly<Record<string, number>> = {
  northeast: 45,
  southeast: 135,
  southwest: 225,
  northwest: 315,
  north: 0,
  east: 90,
  south: 180,
  west: 270,
};

const hollow = new RegExp(
  `concave (?:to(?:wards?)? (?:the )?)?(${Object.keys(compass).join('|')})`,
);
const hands = /(?<![a-z])(left|right|lt|rt)\b(?![- ]?of[- ]?way)/g;
/** A radial that is told from the centre to the point, and not from the point to the centre. */
const outward =
  /radial[^,;]*? to (?:said|the) (?:last )?(?:mentioned )?(?:point|beginning|curve)|to which (?:point )?(?:a |the )?radial/;

/** The hand of the curve; of several that which the word `curve` stands nearest before. */
const sideOf = (text: string): CurveTold['side'] => {
  const found = [...text.matchAll(hands)];
  const curve = text.search(/curv/);
  const first = found.find(({ index }) => index > curve) ?? found[0];
  const hand = first?.[1];
  if (hand === undefined) return null;
  return hand.startsWith('l') ? 'left' : 'right';
};

const joinsOf = (text: string): CurveTold['joins'] => {
  if (/(?:non|not)[- ]?(?:a )?tangent/.test(text)) return 'not tangent';
  return /tangent(?:ial)?(?:ly)? (?:to|with|curve|circular)/.test(text) ? 'tangent' : 'untold';
};

/** More than this is no degree of a curve but may be how far it turns. Ours, no published source. */
const sharpest = fromDegrees(30);

/** The degree of a curve whose radius is not told; by its chord only where that is said. */
const degreeOf = (text: string, values: ReadonlyMap<CurveSlot, number>): CurveDegree | null => {
  const turn = values.get('degree') ?? 0;
  if (turn <= 0 || turn > sharpest || values.has('radius')) return null;
  return { turn: radians(turn), by: /chord definition/.test(text) ? 'chord' : 'arc' };
};

const lengths = ['radius', 'arc', 'chord', 'tangent'] as const;

/**
 * What a call, or the end of one, in small letters tells of a curve by its figures, and those that found
 * no place. `bare` is the inches of a number without a unit.
 */
export const curveTold = (
  text: string,
  figures: readonly Figure[],
  bare: number,
): { readonly told: CurveTold; readonly unused: readonly Figure[] } => {
  const { values, unused } = curveSlots(text, figures, bare);
  const angle = (slot: CurveSlot): Radians | null => {
    const value = values.get(slot);
    return value === undefined ? null : radians(value);
  };
  const told = lengths.flatMap((slot) => {
    const value = values.get(slot);
    return value === undefined ? [] : [[slot, inches(value)] as const];
  });
  const delta = angle('delta');
  const degree = degreeOf(text, values);
  const radial = angle('radial bearing');
  const way = hollow.exec(text)?.[1];
  // a degree beside a radius, or too sharp for one, is not drawn
  const spare = figures.filter(
    (one) =>
      degree === null &&
      one.kind === 'angle' &&
      one.angle.ok &&
      one.angle.value === values.get('degree'),
  );
  return {
    told: {
      given: {
        ...(degree === null ? {} : { radius: radiusOf(degree) }),
        ...Object.fromEntries(told),
        ...(delta === null ? {} : { delta }),
      },
      degree,
      side: sideOf(text),
      concave: way === undefined ? null : fromDegrees(compass[way] ?? 0),
      chord: angle('chord bearing'),
      radial: radial !== null && outward.test(text) ? radians(radial + Math.PI) : radial,
      tangent: angle('tangent bearing'),
      joins: joinsOf(text),
    },
    unused: [...unused, ...spare],
  };
};

/** What is told of a curve before its call and in it; the call itself counts where both tell. */
export const toldTogether = (before: CurveTold | null, own: CurveTold): CurveTold =>
  before === null
    ? own
    : {
        given: { ...before.given, ...own.given },
        degree: own.given.radius === undefined ? before.degree : own.degree,
        side: own.side ?? before.side,
        concave: own.concave ?? before.concave,
        chord: own.chord ?? before.chord,
        radial: own.radial ?? before.radial,
        tangent: own.tangent ?? before.tangent,
        joins: own.joins === 'untold' ? before.joins : own.joins,
      };
