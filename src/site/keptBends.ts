import { distance } from '../geometry/distance.ts';
import { farthest } from '../geometry/tolerance.ts';
import { inches, type Inches } from '../units/inches.ts';
import type { FenceLine } from './fenceLine.ts';
import type { LineId, VertexId } from './ids.ts';
import { legGround } from './legGround.ts';
import { legsOf } from './legsOf.ts';
import type { Site } from './site.ts';
import { withEntry } from './withEntries.ts';

/** A chord that grew by less than this share only rounded. */
const rounding = 1e-12;

const chordsOf = (site: Site, line: FenceLine): ReadonlyMap<string, number> =>
  new Map(
    legsOf(line).map((leg) => {
      const { start, end } = legGround(site, leg);
      return [leg.id, distance(start, end)];
    }),
  );

/** A bow that has grown as its chord has; as it was where one of the chords is no chord. */
const grown = (bow: Inches, was = 0, now = 0): Inches => {
  const share = now / was;
  const next = bow * share;
  if (!(was > 0) || Math.abs(share - 1) < rounding || next === 0) return bow;
  return inches(Math.min(farthest, Math.max(-farthest, next)));
};

const bent = (before: Site, after: Site, id: LineId): Site => {
  const [was, line] = [before.lines[id], after.lines[id]];
  if (was === undefined || line === undefined) return after;
  const bows = Object.entries(line.curved) as [VertexId, Inches][];
  if (bows.length === 0) return after;
  const [old, now] = [chordsOf(before, was), chordsOf(after, line)];
  const curved = bows.map(([leg, bow]) => [leg, grown(bow, old.get(leg), now.get(leg))] as const);
  return withEntry(after, 'lines', id, { ...line, curved: Object.fromEntries(curved) });
};

/**
 * A site whose marks have moved, with its curved legs bent as they were: each goes round by the same
 * angle, its middle ordinate grown as its chord has. A radius that stayed could be less than half of a
 * longer chord, and an ordinate that stayed would make a bulb of a shorter one.
 */
export const keptBends = (before: Site, after: Site): Site =>
  (Object.keys(after.lines) as LineId[]).reduce((so, id) => bent(before, so, id), after);
