import type { PaperPoint } from '../../geometry/point.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { besideRoom, besideShift } from './besideShift.ts';
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

/** Places round a point, most wished for first: parts of the way beside a text along it, and of its way over the point. */
const steps = [
  ...[1, -1].map((up) => [0, up] as const),
  ...[0.5, 1].flatMap((far) => [1, -1].flatMap((up) => [[far, up] as const, [-far, up] as const])),
  [1, 0],
  [-1, 0],
] as const;
/** The same for a text that is taken for its point's a step farther off; one of several lines would not be. */
const farSteps = [...steps, [0, 2], [0, -2]] as const;

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

/** Places of a text near its point, at its angle. */
function* nearBy({ angle: turn, rise }: TextPrimitive, { at, size }: Wishes): Generator<Place> {
  const { width, height } = size;
  const angle = readable(turn);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const side = width / 2 + Math.max(0.04, Math.abs(rise));
  const over = rise === 0 ? height : rise + (Math.sign(rise) * height) / 2;
  if (rise === 0) yield { middle: at, angle };
  for (const [far, high] of height < mostWithoutLeader ? farSteps : steps) {
    const [along, up] = [far * side, high * over];
    const middle = { x: at.x + (along * cos - up * sin), y: at.y + (-along * sin - up * cos) };
    yield { middle, angle };
  }
}

/** Places of a text of a row beside its point, in the order of the row. */
function* inItsRow(
  { angle, beside, rise }: TextPrimitive,
  { at, size }: Wishes,
  { order, projection }: { readonly order: readonly number[]; readonly projection: Projection },
): Generator<Place> {
  if (beside === undefined) return;
  const room = besideRoom({ rise }, beside, size, projection);
  for (const n of order) {
    const { x, y } = besideShift(room, n);
    yield { middle: { x: at.x + x, y: at.y + y }, angle: readable(angle) };
  }
}

/** What the places of a text depend on besides the text: the order of its row, the scale, the room. */
interface Surroundings {
  readonly order: readonly number[];
  readonly projection: Projection;
  readonly room: Lettering;
}

/** Places by their wishes: in its row, near the point, on its line, led out. */
function* places(
  text: TextPrimitive,
  wishes: Wishes,
  { order, projection, room }: Surroundings,
): Generator<Place> {
  yield* inItsRow(text, wishes, { order, projection });
  yield* nearBy(text, wishes);
  yield* onItsLine(text, projection, room);
  if (wishes.far !== 'leave out') yield* ledOut(wishes.size, wishes.at);
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
  // most of thousands of numbers do, and are not measured
  if (runsTogether(primitive, projection)) return unlettered(plainly(primitive));
  const size = labelSize(primitive);
  if (size.width === 0) return unlettered();
  const at = toPaper(projection, primitive.at);
  if (!room.sees(at)) return unlettered(plainly(primitive));
  const { far } = primitive;
  const wishes: Wishes = { at, size, far, cost: costFor(primitive), inSight: room.shows(at) };
  const best = cheapest(places(primitive, wishes, { order, projection, room }), (place, limit) =>
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
