import { boundsOverlap, expandBounds, unionOfBounds, type Bounds } from '../../geometry/bounds.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { Lettering } from './lettering.ts';
import type { Weight } from './weight.ts';

type PaperBox = OrientedBox<'paper'>;

/** Something that was put into a room: a text, or where it has a weight, what letters had better not lie on. */
interface Put {
  readonly box: PaperBox;
  readonly weight: Weight | null;
}

/** What was lettered, what it followed from besides the room, where it looked for room and what it took. */
interface Kept {
  readonly from: readonly unknown[];
  readonly lettered: unknown;
  readonly looked: Bounds | null;
  readonly took: Bounds | null;
  readonly puts: readonly Put[];
}

const grown = (all: Bounds | null, by: Bounds): Bounds =>
  all === null ? by : unionOfBounds(all, by);

/** Texts keep a distance from one another that is less than this, paper inches. */
const nearby = 0.1;

const boundsOfBox = ({ centre, halfWidth, halfHeight, angle }: PaperBox): Bounds => {
  const [cos, sin] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))];
  const [across, up] = [halfWidth * cos + halfHeight * sin, halfWidth * sin + halfHeight * cos];
  const { x, y } = centre;
  return { minX: x - across, minY: y - up, maxX: x + across, maxY: y + up };
};

/** A room that is overheard: where it is asked about, and what is put into it. */
const overheard = (room: Lettering, puts: Put[], looks: (at: Bounds) => void): Lettering => {
  const hear = <Told extends readonly unknown[], Said>(
    ask: (box: PaperBox, ...told: Told) => Said,
  ) => {
    return (box: PaperBox, ...told: Told): Said => {
      looks(boundsOfBox(box));
      return ask(box, ...told);
    };
  };
  return {
    ...room,
    isFree: hear(room.isFree),
    crosses: hear(room.crosses),
    leaders: hear(room.leaders),
    covers: hear(room.covers),
    take: (box) => {
      puts.push({ box, weight: null });
      room.take(box);
    },
    avoid: (box, weight = 'thin') => {
      puts.push({ box, weight });
      room.avoid(box, weight);
    },
  };
};

const letteredAnew = (
  room: Lettering,
  from: readonly unknown[],
  letter: (room: Lettering) => unknown,
): Kept => {
  const puts: Put[] = [];
  let looked: Bounds | null = null;
  const lettered = letter(
    overheard(room, puts, (at) => {
      looked = grown(looked, at);
    }),
  );
  const took = puts.reduce<Bounds | null>((all, { box }) => grown(all, boundsOfBox(box)), null);
  return { from, lettered, looked, took, puts };
};

/** Letters one part into the room, by `letter` or as it was lettered before: see `LetteredBefore`. */
export type LetterPart = <Lettered>(
  id: string,
  from: readonly unknown[],
  letter: (room: Lettering) => Lettered,
) => Lettered;

/**
 * Parts that are lettered one after the other into one room, kept from one drawing to the next. A part is as it was
 * where it follows from the very same things (`from`), and nothing that was put into the room before it, then or now,
 * differs near where it looked for room: so every drawing is as one from nothing. All of the room that a part
 * looks at has to be without edges.
 */
export class LetteredBefore {
  private kept: ReadonlyMap<string, Kept> = new Map();

  /** Begins a drawing in a room that is the same each time. */
  begin(room: Lettering): LetterPart {
    const before = [...this.kept];
    const turns = new Map(before.map(([id], turn) => [id, turn]));
    const now = new Map<string, Kept>();
    this.kept = now;
    const differs: Bounds[] = [];
    let turn = 0;
    const differ = (kept: Kept | undefined): void => {
      if (kept !== undefined && kept.took !== null) differs.push(expandBounds(kept.took, nearby));
    };
    const stands = ({ from, looked }: Kept, wanted: readonly unknown[]): boolean =>
      from.length === wanted.length &&
      from.every((thing, n) => Object.is(thing, wanted[n])) &&
      (looked === null || !differs.some((one) => boundsOverlap(one, looked)));
    return (id, from, letter) => {
      const own = turns.get(id) ?? -1;
      // what came before it then and does not now
      for (; turn < own; turn += 1) differ(before[turn]?.[1]);
      const old = own === turn ? before[turn]?.[1] : undefined;
      if (old !== undefined) turn += 1;
      const still = old !== undefined && stands(old, from);
      const kept = still ? old : letteredAnew(room, from, letter);
      now.set(id, kept);
      if (!still) [old, kept].forEach(differ);
      else
        for (const { box, weight } of kept.puts)
          if (weight === null) room.take(box);
          else room.avoid(box, weight);
      // an id is asked for with one type
      return kept.lettered as ReturnType<typeof letter>;
    };
  }
}
