import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { cheapest } from './cheapest.ts';
import { weigh, type CoverCost } from './coverCost.ts';
import { labelAt } from './label.ts';
import { unlettered, type Lettered } from './lettered.ts';
import type { Lettering } from './lettering.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Radius of a bubble and the size of its numbers, paper inches. */
const radius = 0.2;
const size = 0.141;
/** From the place to the middle of its bubble, paper inches, and in how many directions it is tried. */
const rings = [0.4, 0.55, 0.75, 1, 1.3, 1.7] as const;
const directions = 16;
/** A bubble covers what lies under it: it had better stand on clear ground. */
const cost: CoverCost = { thin: 6, chain: 120, solid: 120, heavy: 80, leader: 120 };
/** Half the strip that its leader takes, paper inches, and what it costs to cross a text. */
const beside = 0.02;
const costOfCrossing = 120;
const leaderOver: CoverCost = { thin: 1, chain: 3, solid: 3, heavy: 20, leader: 120 };

interface Place {
  readonly middle: PaperPoint;
  readonly box: OrientedBox<'paper'>;
  readonly strip: OrientedBox<'paper'>;
  readonly foot: PaperPoint;
}

const placeAt = (at: PaperPoint, turn: number, ring: number): Place => {
  const way = { x: Math.cos(turn), y: -Math.sin(turn) };
  const on = (far: number): PaperPoint => ({ x: at.x + far * way.x, y: at.y + far * way.y });
  const long = (ring - radius) / 2;
  const middle = on(ring);
  return {
    middle,
    box: { centre: middle, halfWidth: radius, halfHeight: radius, angle: radians(0) },
    strip: { centre: on(long), halfWidth: long, halfHeight: beside, angle: radians(-turn) },
    foot: on(ring - radius),
  };
};

function* places(at: PaperPoint): Generator<Place> {
  for (const ring of rings)
    for (let n = 0; n < directions; n++)
      yield placeAt(at, (2 * Math.PI * (n + 0.5)) / directions, ring);
}

const costOf = ({ box, strip }: Place, room: Lettering, limit: number): number | null => {
  if (!room.isFree(box)) return null;
  const under = weigh(room.covers(box, { cost, limit }), cost);
  if (under > limit) return under;
  const crossing = room.crosses(strip) * costOfCrossing;
  return under + weigh(room.covers(strip), leaderOver) + crossing;
};

const drawn = ({ middle, foot }: Place, at: PaperPoint): Atom[] => {
  const across = [
    { x: middle.x - radius, y: middle.y },
    { x: middle.x + radius, y: middle.y },
  ] as const;
  return [
    { do: 'stroke', pen: pens.dimension, outline: segmentsOutline([[at, foot]]) },
    { do: 'fill', ink: 'paper', opacity: 1, outline: circleOutline(middle, radius) },
    { do: 'stroke', pen: pens.detail, outline: circleOutline(middle, radius) },
    { do: 'stroke', pen: pens.detail, outline: segmentsOutline([across]) },
  ];
};

/**
 * Finds clear ground for a bubble near its place, draws it with its leader, and takes the room. One
 * that finds none, or speaks of a place outside the window, is left by its detail and sheet.
 */
export const letterBubble = (
  bubble: Extract<Primitive, { kind: 'bubble' }>,
  projection: Projection,
  room: Lettering,
): Lettered => {
  const left = unlettered(phrase`detail ${bubble.detail} on sheet ${bubble.sheet}`);
  const at = toPaper(projection, bubble.at);
  if (!room.sees(at)) return left;
  const place = cheapest(places(at), (own, limit) => costOf(own, room, limit));
  if (place === null) return left;
  const { middle, box, strip } = place;
  room.take(box);
  room.avoid(strip, 'leader');
  const half = (text: string, side: 1 | -1) =>
    labelAt(
      { text, size, weight: 'bold', ink: 'text' },
      { x: middle.x, y: middle.y + side * 0.085 },
      radians(0),
    ).texts.map((own) => ({ ...own, halo: 'none' as const }));
  return {
    lines: drawn(place, at),
    texts: [...half(bubble.detail, -1), ...half(bubble.sheet, 1)],
    left: [],
    leads: [{ to: bubble.to, box }],
  };
};
