import { bearing } from '../geometry/bearing.ts';
import { principalAngle } from '../geometry/principalAngle.ts';
import { entry } from './entry.ts';
import type { FeatureId } from './ids.ts';
import type { Observation } from './observation.ts';
import { ownMarks } from './marksInUse.ts';
import type { Site } from './site.ts';
import { turnsAt, type Turn } from './turnsAt.ts';

/** A sketched corner within this of a quarter turn is meant square, radians: 10 degrees. Ours. */
const looksSquare = Math.PI / 18;

const isSaid = (site: Site, { at, from, to }: Turn): boolean =>
  Object.values<Observation>(site.observations).some(
    (seen) =>
      seen.kind === 'square' &&
      seen.at === at &&
      [seen.from, seen.to].toSorted().join() === [from, to].toSorted().join(),
  );

/**
 * The corners of a feature that look square, within 10 degrees, and of which nobody has said that they
 * are. None for a tree or note. RangeError for an unknown feature.
 */
export const squareTurns = (site: Site, id: FeatureId): Turn[] => {
  const own = new Set(ownMarks(entry(site, 'features', id)));
  const turns = [...own].flatMap((mark) => turnsAt(site, mark));
  return turns.filter((turn) => {
    const [at, from, to] = [turn.at, turn.from, turn.to].map((mark) => site.marks[mark]);
    if (at === undefined || from === undefined || to === undefined) return false;
    if (!own.has(turn.from) || !own.has(turn.to) || isSaid(site, turn)) return false;
    const angle = Math.abs(principalAngle(bearing(at, to) - bearing(at, from)));
    return Math.abs(angle - Math.PI / 2) <= looksSquare;
  });
};
