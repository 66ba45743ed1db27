import fc from 'fast-check';
import { expect, it } from 'vitest';
import { LetteredBefore, type LetterPart } from '../../../src/drawing/lettering/letteredBefore.ts';
import { makeLettering, type Lettering } from '../../../src/drawing/lettering/lettering.ts';
import { usualCost, weigh } from '../../../src/drawing/lettering/coverCost.ts';
import type { OrientedBox } from '../../../src/geometry/orientedBox.ts';
import { radians } from '../../../src/units/radians.ts';

/** Words on a row that want to stand at a place, or to its right where that is taken. */
interface Part {
  readonly id: string;
  readonly wishes: readonly number[];
  readonly line: boolean;
}

const box = (x: number): OrientedBox<'paper'> => ({
  centre: { x, y: 0 },
  halfWidth: 0.4,
  halfHeight: 0.1,
  angle: radians(0),
});

const letterInto = (room: Lettering, { wishes, line }: Part): (number | null)[] => {
  const places = wishes.map((wish) => {
    const place = [0, 0.9, 1.8].map((shift) => wish + shift).find((x) => room.isFree(box(x)));
    if (place === undefined || weigh(room.covers(box(place)), usualCost) > 0) return null;
    room.take(box(place));
    return place;
  });
  if (line) room.avoid(box((wishes[0] ?? 0) + 0.5));
  return places;
};

const anyPart = fc.record({
  id: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
  wishes: fc.array(
    fc.integer({ min: 0, max: 30 }).map((n) => n / 3),
    { maxLength: 3 },
  ),
  line: fc.boolean(),
});
const anyDrawing = fc.uniqueArray(anyPart, { selector: ({ id }) => id, maxLength: 6 });

const drawn = (parts: readonly Part[], letter: LetterPart, asked?: (id: string) => void) =>
  parts.map((part) =>
    letter(part.id, [JSON.stringify(part.wishes), part.line], (room) => {
      asked?.(part.id);
      return letterInto(room, part);
    }),
  );

it('every drawing that parts of the one before are kept for is as one from nothing', () => {
  fc.assert(
    fc.property(fc.array(anyDrawing, { minLength: 2, maxLength: 6 }), (drawings) => {
      const before = new LetteredBefore();
      for (const parts of drawings) {
        const rooms = [makeLettering(null, []), makeLettering(null, [])] as const;
        const ours = drawn(parts, before.begin(rooms[0]));
        expect(ours).toEqual(drawn(parts, new LetteredBefore().begin(rooms[1])));
        const spots = Array.from({ length: 120 }, (_, n) => box(n / 10));
        const [mine, theirs] = rooms.map((room) =>
          spots.map((at) => [room.isFree(at), room.covers(at)]),
        );
        expect(mine).toEqual(theirs);
      }
    }),
    { numRuns: 300 },
  );
});

it('letters only the part that differs, and those near what it put or puts', () => {
  const part = (id: string, x: number): Part => ({ id, wishes: [x], line: false });
  const before = new LetteredBefore();
  const asked: string[] = [];
  const draw = (parts: readonly Part[]) => {
    asked.length = 0;
    drawn(parts, before.begin(makeLettering(null, [])), (id) => asked.push(id));
    return [...asked];
  };
  const [a, b, c, d] = [part('a', 0), part('b', 3), part('c', 3.5), part('d', 9)];
  expect(draw([a, b, c, d])).toEqual(['a', 'b', 'c', 'd']);
  expect(draw([a, b, c, d])).toEqual([]);
  expect(draw([a, part('b', 3.1), c, d])).toEqual(['b', 'c']);
  expect(draw([a, c, d])).toEqual(['c']);
  expect(draw([part('a', 9), c, d])).toEqual(['a', 'd']);
});
