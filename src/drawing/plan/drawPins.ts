import type { Layout } from '../../engine/layout.ts';
import { trackAt, trackBearing } from '../../geometry/track.ts';
import { moved } from '../../geometry/moved.ts';
import { alongOf } from '../../site/anchor.ts';
import type { Pin } from '../../site/pin.ts';
import type { Site } from '../../site/site.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';

/** How far to each side of a fence ground that is kept clear by hand is hatched, inches. */
const clearHalf = 12;

const drawClear = (pin: Pin, { lines }: Layout): Primitive[] => {
  const leg = lines[pin.line]?.legs.find(({ id }) => id === pin.leg);
  if (leg === undefined || pin.holds.kind !== 'clear') return [];
  const along = alongOf(pin.anchor, leg.length);
  const { reach } = pin.holds;
  const at = (to: number, side: 1 | -1) => {
    const across = radians(trackBearing(leg, along + to) + Math.PI / 2);
    return moved(trackAt(leg, along + to), across, side * clearHalf);
  };
  const stops = leg.bow === 0 ? [-reach, reach] : [-1, -0.5, 0, 0.5, 1].map((n) => n * reach);
  const points = [...stops.map((to) => at(to, -1)), ...stops.toReversed().map((to) => at(to, 1))];
  return [
    { kind: 'area', points, ink: 'keep-out', opacity: 0.05, hatch: 'cross' },
    { kind: 'polyline', points, closed: true, pen: 'keep-out' },
  ];
};

/** Posts that are held by hand have an id of their pin. */
export const isHeld = (id: string): boolean => id.startsWith('post:pin:');

/** Ground that is kept clear of holes by hand, as a hatched piece over the fence. */
export const drawClearGround = (site: Site, layout: Layout): readonly Primitive[] =>
  Object.values(site.pins).flatMap((pin) => drawClear(pin, layout));

/** A pin beside the hole of every post that is held by hand. */
export const drawHeld = ({ posts }: Layout): readonly Primitive[] =>
  [...posts.values()].flatMap((post): Primitive[] =>
    isHeld(post.id)
      ? [{ kind: 'sign', sign: 'held', at: post.at, off: post.hole.diameter / 2 }]
      : [],
  );
