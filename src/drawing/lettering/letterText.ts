import type { PaperPoint } from '../../geometry/point.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { besideShifts } from './besideShifts.ts';
import { cheapest } from './cheapest.ts';
import { usualCost, weigh, type CoverCost } from './coverCost.ts';
import { labelAt, labelBox, labelSize, type LabelSize } from './label.ts';
import { leaderAtoms, leaderLine, type Leader } from './leaderLine.ts';
import { unlettered, type Lettered } from './lettered.ts';
import type { Lettering } from './lettering.ts';
import { readable } from './readable.ts';
import { runsTogether } from './runsTogether.ts';

type TextPrimitive = Extract<Primitive, { kind: 'text' }>;

/** How far out a text may be led, paper inches, and in how many directions it is tried. */
const rings = [0.3, 0.5, 0.75, 1.05, 1.4, 1.8, 2.3, 2.9] as const;
const directions = 16;

/** A text that would rather be led out than lie on a line gives as many places for that. */
const rather: CoverCost = { thin: 100, chain: 400, solid: 400, heavy: 400, leader: 400 };

/** A text of a row would rather stand where its row does than clear of one line. */
const inRow: CoverCost = { thin: 0.9, chain: 60, solid: 60, heavy: 60, leader: 60 };

/** A higher text is led out before it stands one more height away, paper inches. */
const mostWithoutLeader = 0.25;

/** Places round a point, along the text and up from it, the most wished for first. */
const shiftsOf = (width: number, height: number, rise: number): (readonly [number, number])[] => {
  const side = width / 2 + Math.max(0.04, Math.abs(rise));
  const up = rise === 0 ? height : rise + (Math.sign(rise) * height) / 2;
  const centre = rise === 0 ? [[0, 0] as const] : [];
  return [
    ...centre,
    [0, up],
    [0, -up],
    ...([up, -up] as const).flatMap((v) => [[side / 2, v] as const, [-side / 2, v] as const]),
    ...([up, -up] as const).flatMap((v) => [[side, v] as const, [-side, v] as const]),
    [side, 0],
    [-side, 0],
    // a text of several lines would stand too far off to be taken for this point's
    ...(height < mostWithoutLeader ? [[0, 2 * up] as const, [0, -2 * up] as const] : []),
  ];
};

/** The same as ways on the paper. */
const turnedShifts = ({ angle, rise }: TextPrimitive, { width, height }: LabelSize) => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return shiftsOf(width, height, rise).map(([along, up]) => ({
    x: along * cos - up * sin,
    y: -along * sin - up * cos,
  }));
};

/** What a text is called that finds no place. */
const plainly = ({ name, text }: TextPrimitive): string => (name ?? text).replaceAll('\n', ', ');

/** A place for the middle of a label. */
interface Place {
  readonly middle: PaperPoint;
  readonly angle: Radians;
  /** It is led out to; or its own line lies under it, to be broken for it. */
  readonly on?: 'a leader' | 'its line';
}

/** A name on its line leaves so much of a straight piece of it, paper inches. */
const leastLeft = 0.3;

/** Places on the text's own line as far as that is broken for letters and long enough there. */
const onItsLine = (text: TextPrimitive, projection: Projection, room: Lettering): Place[] => {
  if (room.thin !== 'broken') return [];
  const { width } = labelSize(text);
  return (text.on ?? [])
    .filter(({ long }) => long * projection.scale >= width + leastLeft)
    .map(({ at, angle }) => ({
      middle: toPaper(projection, at),
      angle: readable(angle),
      on: 'its line',
    }));
};

/** A leader through another text is worse than any place. */
const costOfCrossing = 250;
/** A leader crosses no other; one through a house, or along a fence over its posts, is lost: others are longer and clear. */
const leaderOver: CoverCost = { thin: 1, chain: 5, solid: 5, heavy: 40, leader: 250 };
const leaderOfName: CoverCost = { thin: 4, chain: 8, solid: 8, heavy: 120, leader: 300 };
/** A name that is cut off at the edge of what is shown is hardly better than one on two lines. */
const costOfHiding = 150;

/** Where texts are led out to, one way after the other round their point. */
const ways = Array.from({ length: directions }, (_, n) => {
  const turn = (2 * Math.PI * (n + 0.5)) / directions;
  return { cos: Math.cos(turn), sin: Math.sin(turn) };
});

const upright = radians(0);

function* ledOut({ width, height }: LabelSize, at: PaperPoint): Generator<Place> {
  for (const ring of rings) {
    for (const { cos, sin } of ways) {
      const middle = {
        x: at.x + cos * (ring + width / 2),
        y: at.y - sin * (ring + height / 2),
      };
      yield { middle, angle: upright, on: 'a leader' };
    }
  }
}

/** Ways from the point of a text, paper inches, at which angle it is there, and its places on its line. */
interface PlacesNear {
  readonly shifts: readonly PaperPoint[];
  readonly angle: Radians;
  readonly own: readonly Place[];
}

/** Places by their wishes: near the point, on its line, led out. */
function* places(
  { far, size }: Pick<Wishes, 'far' | 'size'>,
  at: PaperPoint,
  { shifts, angle, own }: PlacesNear,
): Generator<Place> {
  for (const { x, y } of shifts) yield { middle: { x: at.x + x, y: at.y + y }, angle };
  yield* own;
  if (far !== 'leave out') yield* ledOut(size, at);
}

const costFor = ({ far, beside }: TextPrimitive): CoverCost => {
  if (beside !== undefined) return inRow;
  return far === 'rather' ? rather : usualCost;
};

const costOfLeader = ({ strip }: Leader, cost: CoverCost, room: Lettering): number => {
  const over = weigh(room.covers(strip), cost === rather ? leaderOfName : leaderOver);
  return room.crosses(strip) * costOfCrossing + over;
};

/** A text that looks for its place: where it belongs, what lines cost it, and whether its point is in sight. */
interface Wishes {
  readonly at: PaperPoint;
  readonly size: LabelSize;
  readonly far: TextPrimitive['far'];
  readonly cost: CoverCost;
  readonly inSight: boolean;
}

/** What is wrong with a place; null where the label has no room there, and no more than told beyond the limit. */
const costOf = (
  { middle, angle, on }: Place,
  { at, size, far, cost, inSight }: Wishes,
  { room, limit }: { readonly room: Lettering; readonly limit: number },
): number | null => {
  const box = labelBox(size, middle, angle);
  if (!room.isFree(box)) return null;
  const free = on === 'its line' ? 1 : 0;
  const covered = room.covers(box, { cost, limit: limit + free * cost.thin });
  // in a dimension line a number that is no dimension would be taken for one
  if (far === 'leave out' && room.thin === 'broken' && covered.chain + covered.leader > 0)
    return null;
  const own = Math.min(free, covered.thin);
  const under = weigh(own === 0 ? covered : { ...covered, thin: covered.thin - own }, cost);
  if (under > limit) return under;
  const hiding = inSight && !room.showsAll(box) ? costOfHiding : 0;
  const leading = on === 'a leader' ? costOfLeader(leaderLine(at, box), cost, room) : 0;
  return under + leading + hiding;
};

/**
 * Finds a place for a free text: where it wishes to be, else beside that, else farther off with a
 * leader, and takes the room. What finds none, or speaks of a place outside the window, is left.
 * `order` is that of the places of its row, where it stands in one.
 */
export const letterText = (
  primitive: TextPrimitive,
  projection: Projection,
  room: Lettering,
  order: readonly number[] = [],
): Lettered => {
  const size = labelSize(primitive);
  if (size.width === 0) return unlettered();
  const at = toPaper(projection, primitive.at);
  if (runsTogether(primitive, projection) || !room.sees(at)) return unlettered(plainly(primitive));
  const { far } = primitive;
  const beside = besideShifts(primitive, projection);
  const near: PlacesNear = {
    shifts: [...order.flatMap((n) => beside[n] ?? []), ...turnedShifts(primitive, size)],
    angle: readable(primitive.angle),
    own: onItsLine(primitive, projection, room),
  };
  const wishes: Wishes = { at, size, far, cost: costFor(primitive), inSight: room.shows(at) };
  const best = cheapest(places(wishes, at, near), (place, limit) =>
    costOf(place, wishes, { room, limit }),
  );
  if (best === null) return unlettered(plainly(primitive));
  const { texts, box } = labelAt(primitive, best.middle, best.angle);
  const leader = best.on === 'a leader' ? leaderLine(at, box) : null;
  room.take(box);
  if (leader !== null) room.avoid(leader.strip, 'leader');
  const { to } = primitive;
  const leads = to === undefined ? [] : [{ to, box }];
  return { lines: leader === null ? [] : leaderAtoms(leader), texts, left: [], leads };
};
