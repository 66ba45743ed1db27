import type { GateId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Flag } from '../flag.ts';
import type { Layout } from '../layout.ts';
import { restsOn, type Rested } from './restsOn.ts';
import { standingOf, type Standing } from './standing.ts';

/** What a gate wants of the office, what is most urgent first. */
export const needs = ['stop', 'void', 'unsigned', 'signed'] as const;

export type Need = (typeof needs)[number];

/** Stops that come of the posts as they were set: an opening can be signed in spite of them. */
const setRules: ReadonlySet<string> = new Set(['set too narrow', 'set too wide']);

/** How the sign-off of one gate stands, and the stops that forbid a new one. */
export interface GateStanding {
  readonly id: GateId;
  readonly rested: Rested;
  readonly standing: Standing;
  readonly stops: readonly Flag[];
  readonly need: Need;
}

/** Every gate of a site with its standing, in the order of the layout. */
export const standingsOf = (site: Site, layout: Layout): readonly GateStanding[] => {
  const stopped = layout.flags.filter(({ level }) => level === 'stop');
  return Object.values(layout.gates).flatMap((laid): GateStanding[] => {
    const { id } = laid;
    const gate = site.gates[id];
    if (gate === undefined) return [];
    const rested = restsOn(site, layout, laid);
    const standing = standingOf(gate, rested);
    const own = stopped.filter(({ place }) => place.kind === 'gate' && place.id === id);
    // what was set is no part of what is signed
    const stops = own.filter(({ rule }) => !setRules.has(rule));
    return [{ id, rested, standing, stops, need: own.length > 0 ? 'stop' : standing.kind }];
  });
};
