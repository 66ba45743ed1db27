import type { Found, FoundPath, FoundPoint } from '../../src/site/found.ts';
import type { Parsed } from '../../src/units/parsed.ts';

/** What was found; throws the line of what was not. */
export const foundIn = (parsed: Parsed<Found>): Found => {
  if (!parsed.ok) throw new Error(parsed.reason);
  return parsed.value;
};

export const reasonOf = (parsed: Parsed<unknown>): string => (parsed.ok ? 'read' : parsed.reason);

/** The paths of a group by its key; none where there is no such group. */
export const pathsOf = (found: Found, key: string): readonly FoundPath[] =>
  found.groups.flatMap((group) => (group.key === key && 'paths' in group ? group.paths : []));

/** The points of a group by its key. */
export const pointsOf = (found: Found, key: string): readonly FoundPoint[] =>
  found.groups.flatMap((group) => (group.key === key && 'points' in group ? group.points : []));
