import { entry } from '../entry.ts';
import type { LineId, VertexId } from '../ids.ts';
import { legAt } from '../legGround.ts';
import type { Site } from '../site.ts';
import type { WallTop } from '../wallTop.ts';
import { withEntry } from '../withEntries.ts';

/** A leg of a line, and what it is to stand on: null for the ground. */
export interface LegOnWall {
  readonly line: LineId;
  readonly leg: VertexId;
  readonly wall: WallTop | null;
}

/** Lets a leg stand on a wall or kerb, or on the ground. RangeError for an unknown line or leg. */
export const setLegWall = (site: Site, { line: id, leg, wall }: LegOnWall): Site => {
  const line = entry(site, 'lines', id);
  legAt(line, leg);
  const others = Object.entries(line.walls).filter(([other]) => other !== leg);
  const walls = wall === null ? others : [...others, [leg, wall] as const];
  return withEntry(site, 'lines', id, { ...line, walls: Object.fromEntries(walls) });
};
