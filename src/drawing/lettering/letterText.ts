import { corners } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { besideShifts } from './besideShifts.ts';
import { cheapest } from './cheapest.ts';
import { usualCost, weigh, type CoverCost } from './coverCost.ts';
import { labelAt, labelSize, type Label } from './label.ts';
import { leaderLine, type Leader } from './leaderLine.ts';
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

/** A place for a label, with the leader that it needs where it is led out. */
interface Place {
  readonly label: Label;
  readonly leader: Leader | null;
  /** Its own line lies under it, to be broken for it. */
  readonly on?: 'its line';
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
      label: labelAt(text, toPaper(projection, at), readable(angle)),
      leader: null,
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

function* ledOut(primitive: TextPrimitive, at: PaperPoint): Generator<Place> {
  const { width, height } = labelSize(primitive);
  for (const ring of rings) {
    for (let n = 0; n < directions; n++) {
      const turn = (2 * Math.PI * (n + 0.5)) / directions;
      const middle = {
        x: at.x + Math.cos(turn) * (ring + width / 2),
        y: at.y - Math.sin(turn) * (ring + height / 2),
      };
      const label = labelAt(primitive, middle, radians(0));
      yield { label, leader: leaderLine(at, label.box) };
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
  text: TextPrimitive,
  at: PaperPoint,
  { shifts, angle, own }: PlacesNear,
): Generator<Place> {
  for (const { x, y } of shifts)
    yield { label: labelAt(text, { x: at.x + x, y: at.y + y }, angle), leader: null };
  yield* own;
  if (text.far !== 'leave out') yield* ledOut(text, at);
}

const costFor = ({ far, beside }: TextPrimitive): CoverCost => {
  if (beside !== undefined) return inRow;
  return far === 'rather' ? rather : usualCost;
};

const costOfLeader = ({ strip }: Leader, cost: CoverCost, room: Lettering): number => {
  const over = weigh(room.covers(strip), cost === rather ? leaderOfName : leaderOver);
  return room.crosses(strip) * costOfCrossing + over;
};

/** How a text stands: what lines cost it, whether its place is in sight, and whether it may be left out. */
interface Wishes {
  readonly cost: CoverCost;
  readonly inSight: boolean;
  readonly mayMiss: boolean;
}

/** What is wrong with a place; null where the label has no room there. */
const costOf = (
  { label: { box }, leader, on }: Place,
  { cost, inSight, mayMiss }: Wishes,
  room: Lettering,
): number | null => {
  if (!room.isFree(box)) return null;
  const covered = room.covers(box);
  // in a dimension line a number that is no dimension would be taken for one
  if (mayMiss && room.thin === 'broken' && covered.chain + covered.leader > 0) return null;
  const hiding = inSight && !corners(box).every(room.shows) ? costOfHiding : 0;
  const leading = leader === null ? 0 : costOfLeader(leader, cost, room);
  const thin = on === undefined ? covered.thin : Math.max(0, covered.thin - 1);
  return weigh({ ...covered, thin }, cost) + leading + hiding;
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
  const { width, height } = labelSize(primitive);
  if (width === 0) return unlettered();
  const plain = (primitive.name ?? primitive.text).replaceAll('\n', ', ');
  if (runsTogether(primitive, projection)) return unlettered(plain);
  const at = toPaper(projection, primitive.at);
  if (!room.sees(at)) return unlettered(plain);
  const [cos, sin] = [Math.cos(primitive.angle), Math.sin(primitive.angle)];
  const angle = readable(primitive.angle);
  const beside = besideShifts(primitive, projection);
  const shifts = [
    ...order.flatMap((n) => beside[n] ?? []),
    ...shiftsOf(width, height, primitive.rise).map(([along, up]) => ({
      x: along * cos - up * sin,
      y: -along * sin - up * cos,
    })),
  ];
  const wishes: Wishes = {
    cost: costFor(primitive),
    inSight: room.shows(at),
    mayMiss: primitive.far === 'leave out',
  };
  const own = onItsLine(primitive, projection, room);
  const best = cheapest(places(primitive, at, { shifts, angle, own }), (place) =>
    costOf(place, wishes, room),
  );
  if (best === null) return unlettered(plain);
  const { label, leader } = best;
  room.take(label.box);
  if (leader !== null) room.avoid(leader.strip, 'leader');
  const { to } = primitive;
  const leads = to === undefined ? [] : [{ to, box: label.box }];
  return { lines: leader?.atoms ?? [], texts: label.texts, left: [], leads };
};
