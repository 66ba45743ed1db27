import type { MarkId } from '../../../src/site/ids.ts';
import type { Observation } from '../../../src/site/observation.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

export type PlaceOf = (id: MarkId) => Place;

/** The direction from one place to another, counter-clockwise from east. */
const direction = (a: Place, b: Place): number => Math.atan2(b.y - a.y, b.x - a.x);

/** The same angle between -π and π. */
const wrapped = (angle: number): number => Math.atan2(Math.sin(angle), Math.cos(angle));

/** How far a place lies left of the line from one place to another: twice the area over the base. */
const leftOf = (p: Place, a: Place, b: Place): number => {
  const area2 = a.x * (b.y - p.y) + b.x * (p.y - a.y) + p.x * (a.y - b.y);
  return area2 / Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
};

/**
 * What would be read of an observation where marks stand, in plain trigonometry: for tests, and
 * written without a look at what the engine does. A square corner reads its angle, either way round.
 */
export const plainObserved = (seen: Observation, at: PlaceOf): readonly number[] => {
  switch (seen.kind) {
    case 'tape': {
      const [a, b] = [at(seen.from), at(seen.to)];
      return [Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2)];
    }
    case 'bearing':
      return [direction(at(seen.from), at(seen.to))];
    case 'square': {
      const corner = at(seen.at);
      const turn = direction(corner, at(seen.to)) - direction(corner, at(seen.from));
      return [Math.abs(wrapped(turn))];
    }
    case 'straight':
    case 'offset':
      return [leftOf(at(seen.at), at(seen.from), at(seen.to))];
    case 'parallel': {
      const [from, to] = [at(seen.from), at(seen.to)];
      return [leftOf(at(seen.at), from, to) - leftOf(at(seen.other), from, to)];
    }
    case 'fix': {
      const { x, y } = at(seen.mark);
      return [x, y];
    }
  }
};

/** What was read of an observation, in the same order. */
export const plainRead = (seen: Observation): readonly number[] => {
  switch (seen.kind) {
    case 'tape':
      return [seen.length];
    case 'bearing':
      return [seen.bearing];
    case 'square':
      return [Math.PI / 2];
    case 'offset':
      return [seen.distance];
    case 'straight':
    case 'parallel':
      return [0];
    case 'fix':
      return [seen.x, seen.y];
  }
};

/** What marks have less what was read, in the same order; angles the short way round. */
export const plainOff = (seen: Observation, at: PlaceOf): readonly number[] => {
  const read = plainRead(seen);
  return plainObserved(seen, at).map((now, n) => {
    const off = now - (read[n] ?? 0);
    return seen.kind === 'bearing' ? wrapped(off) : off;
  });
};
