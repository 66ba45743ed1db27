import type { Bounds } from '../geometry/bounds.ts';
import type { Atom } from './atom.ts';
import type { Room } from './drawOnPaper.ts';
import { avoidMark } from './explode/avoidMark.ts';
import { markAtoms } from './explode/markAtoms.ts';
import { inkedBounds } from './inkedBounds.ts';
import { isNear } from './isNear.ts';
import type { Lettered } from './lettering/lettered.ts';
import { letterer } from './lettering/letterer.ts';
import type { Group } from './group.ts';
import { makeLettering, type Held, type HeldLettering } from './lettering/lettering.ts';
import { runsTogether } from './lettering/runsTogether.ts';
import { primitiveBounds } from './primitiveBounds.ts';
import type { Primitive } from './primitive.ts';
import type { Projection } from './projection.ts';

/** A group on paper (inches, y down). */
export interface PaperPiece {
  readonly group: Group;
  /** What is drawn of it, then lines of dimensions and leaders, then letters: these lie over all pieces' marks. */
  readonly marks: readonly Atom[];
  readonly lines: readonly Atom[];
  readonly texts: readonly Atom[];
  /** All that its atoms take up; null where nothing of it is drawn. */
  readonly bounds: Bounds | null;
  /** All that it would take up on paper without end, letters aside. */
  readonly reach: Bounds | null;
  /** The room that it takes from the letters of others. */
  readonly held: readonly Held[];
}

/**
 * Groups on paper at a scale, kept so that it can be gone on from: the same atoms as `drawOnPaper` has of their
 * primitives, while it was drawn from nothing. The room for letters is its own and changes as it is redrawn.
 */
export interface PaperDrawing {
  readonly pieces: readonly PaperPiece[];
  readonly projection: Projection;
  readonly window: Bounds | null;
  readonly shown: Bounds | null;
  readonly room: HeldLettering;
}

/** What of a drawing was drawn anew, and where anything on the paper may look different. */
export interface Redrawn {
  readonly drawing: PaperDrawing;
  readonly changed: readonly Bounds[];
}

const isChain = ({ kind }: Primitive): boolean => kind === 'dimension chain';

/** A group that is to be drawn, and what it would take up on paper without end. */
type Fresh = Pick<PaperPiece, 'group' | 'reach'>;

interface Draft extends Fresh {
  readonly held: Held[];
  /** What was lettered of each of the group, by its place in it; nothing where nothing found a place. */
  readonly found: Lettered[];
}

const none: readonly never[] = [];

const finished = (
  { group, reach, held, found }: Draft,
  projection: Projection,
  window: Bounds | null,
): PaperPiece => {
  if (!isNear(reach, window))
    return { group, marks: none, lines: none, texts: none, bounds: null, reach, held };
  const marks: Atom[] = [];
  const lines: Atom[] = [];
  const texts: Atom[] = [];
  for (const primitive of group) marks.push(...markAtoms(primitive, projection, window));
  // in the order of the group, whatever was lettered first
  found.forEach((lettered) => {
    lines.push(...lettered.lines);
    texts.push(...lettered.texts);
  });
  const bounds = inkedBounds([...marks, ...lines, ...texts]);
  return { group, marks, lines, texts, bounds, reach, held };
};

type Paper = Pick<PaperDrawing, 'projection' | 'window' | 'room'>;

const freshOf = (group: Group, projection: Projection): Fresh => ({
  group,
  reach: primitiveBounds(group, projection),
});

/** Draws groups into the room that is there, bit by bit: dimensions are lettered first, the last of each first. */
function* drawInto(
  fresh: readonly Fresh[],
  { projection, window, room }: Paper,
): Generator<undefined, ReadonlyMap<Group, PaperPiece>, undefined> {
  const drafts = fresh.map((one): Draft => ({ ...one, held: [], found: [] }));
  const near = drafts.filter(({ reach }) => isNear(reach, window));
  for (const { group, held } of near) {
    room.note(held);
    for (const primitive of group) avoidMark(room, primitive, projection, window);
    room.note(null);
    yield;
  }
  const letter = letterer(
    near.flatMap(({ group }) => group),
    projection,
    room,
  );
  const last = near.toReversed();
  for (const chains of [true, false]) {
    for (const { group, held, found } of last) {
      room.note(held);
      for (let n = group.length - 1; n >= 0; n -= 1) {
        const primitive = group[n];
        if (primitive === undefined || isChain(primitive) !== chains) continue;
        const lettered = letter(primitive);
        if (lettered !== null && lettered.texts.length > 0) found[n] = lettered;
      }
      room.note(null);
      yield;
    }
  }
  const pieces = new Map<Group, PaperPiece>();
  for (const draft of drafts) {
    pieces.set(draft.group, finished(draft, projection, window));
    yield;
  }
  return pieces;
}

const inOrder = (
  groups: readonly Group[],
  drawn: ReadonlyMap<Group, PaperPiece>,
  standing: (group: Group, n: number) => PaperPiece | undefined = () => undefined,
): PaperPiece[] => {
  const pieces: PaperPiece[] = [];
  groups.forEach((group, n) => {
    const piece = drawn.get(group) ?? standing(group, n);
    if (piece !== undefined) pieces.push(piece);
  });
  return pieces;
};

/**
 * Draws groups on paper from nothing, bit by bit: between two calls of `next` lies the work of one group. What
 * it comes to is what `drawOnPaper` draws of the same primitives with the same room.
 */
export function* drawFromNothing(
  groups: readonly Group[],
  projection: Projection,
  { window = null, taken = [], shown = null }: { [Part in keyof Room]: Room[Part] | null },
): Generator<undefined, PaperDrawing, undefined> {
  const room = makeLettering(window, taken ?? [], { shown, thin: 'whole' });
  const fresh = groups.map((group) => freshOf(group, projection));
  const pieces = yield* drawInto(fresh, { projection, window, room });
  return { pieces: inOrder(groups, pieces), projection, window, shown, room };
}

/** Carries a drawing out to its end at once. */
export const atOnce = <T>(steps: Generator<undefined, T, undefined>): T => {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
};

const same = (a: Bounds | null, b: Bounds | null): boolean =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.minX === b.minX &&
    a.minY === b.minY &&
    a.maxX === b.maxX &&
    a.maxY === b.maxY);

const holds = (all: Bounds | null, part: Bounds): boolean =>
  all === null ||
  (part.minX >= all.minX &&
    part.minY >= all.minY &&
    part.maxX <= all.maxX &&
    part.maxY <= all.maxY);

/** What is seen of a drawing and where its letters go. */
type Look = Pick<PaperDrawing, 'window' | 'shown'>;

/** Whether a piece looks the same through another window: it is wholly in sight before and after, or not at all. */
const looksAlike = ({ reach }: PaperPiece, before: Look, now: Look): boolean => {
  if (reach === null) return true;
  if (holds(before.shown, reach) && holds(now.shown, reach)) return true;
  return !isNear(reach, before.window) && !isNear(reach, now.window);
};

/** Which groups have to be drawn anew, and which pieces go. */
export interface Difference {
  readonly fresh: readonly Fresh[];
  readonly gone: readonly PaperPiece[];
  /** So many primitives that have to be drawn anew are in sight, without texts that run together and are left out. */
  readonly inSight: number;
}

/** The pieces that are not where their groups are, and the groups of which that is so: few, where most stand. */
const outOfPlace = (pieces: readonly PaperPiece[], groups: readonly Group[]) => ({
  pieces: pieces.filter(({ group }, n) => group !== groups[n]),
  groups: groups.filter((group, n) => group !== pieces[n]?.group),
});

/** What has to be drawn anew for other groups, or to be seen through another window. */
export const differenceOf = (
  before: PaperDrawing,
  groups: readonly Group[],
  look: Look,
): Difference => {
  const moved = !same(before.window, look.window) || !same(before.shown, look.shown);
  const all = moved ? { pieces: before.pieces, groups } : outOfPlace(before.pieces, groups);
  const wanted = new Set(all.groups);
  const standing = new Set<Group>();
  const gone: PaperPiece[] = [];
  for (const piece of all.pieces) {
    const stands = wanted.has(piece.group) && (!moved || looksAlike(piece, before, look));
    if (stands) standing.add(piece.group);
    else gone.push(piece);
  }
  const fresh = all.groups
    .filter((group) => !standing.has(group))
    .map((group) => freshOf(group, before.projection));
  const isDrawn = (primitive: Primitive): boolean =>
    primitive.kind !== 'text' || !runsTogether(primitive, before.projection);
  let inSight = 0;
  for (const { group, reach } of fresh)
    if (isNear(reach, look.window))
      for (const primitive of group) inSight += isDrawn(primitive) ? 1 : 0;
  return { fresh, gone, inSight };
};

/**
 * A drawing with other groups, or seen through another window: only what differs is drawn anew, and finds its
 * letters where others have left room. `before` is used up: its room is now that of the new drawing.
 */
export const redrawn = (
  before: PaperDrawing,
  groups: readonly Group[],
  look: Look,
  { fresh, gone }: Difference,
): Redrawn => {
  const { room, projection } = before;
  for (const { held } of gone) held.forEach(room.giveBack);
  room.lookThrough(look.window, look.shown);
  const drawn = atOnce(drawInto(fresh, { projection, window: look.window, room }));
  const others = outOfPlace(before.pieces, groups).pieces;
  const known = new Map(others.map((piece) => [piece.group, piece]));
  const pieces = inOrder(groups, drawn, (group, n) => {
    const there = before.pieces[n];
    return there?.group === group ? there : known.get(group);
  });
  const changed = [...gone, ...drawn.values()].flatMap(({ bounds }) => bounds ?? []);
  return { drawing: { ...look, pieces, projection, room }, changed };
};
