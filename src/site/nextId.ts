import type { Site } from './site.ts';

/** What an id can name. */
export type IdKind =
  | 'mark'
  | 'vertex'
  | 'line'
  | 'gate'
  | 'leaf'
  | 'feature'
  | 'pin'
  | 'shot'
  | 'level'
  | 'observation'
  | 'acceptance'
  | 'town-rule'
  | 'alternative'
  | 'offcut'
  | 'underlay'
  | 'tie'
  | 'spec'
  | 'hardware';

const vertexIds = (site: Site): string[] =>
  [...Object.values(site.lines), ...Object.values(site.features)].flatMap((entry) =>
    'path' in entry ? Object.keys(entry.path) : [],
  );

const idsOf: Readonly<Record<IdKind, (site: Site) => string[]>> = {
  mark: (site) => Object.keys(site.marks),
  vertex: vertexIds,
  line: (site) => Object.keys(site.lines),
  gate: (site) => Object.keys(site.gates),
  leaf: (site) => Object.values(site.gates).flatMap((gate) => Object.keys(gate.leaves)),
  feature: (site) => Object.keys(site.features),
  pin: (site) => Object.keys(site.pins),
  shot: (site) => Object.keys(site.shots),
  level: (site) => Object.keys(site.levels.notes),
  acceptance: (site) => Object.keys(site.acceptances),
  alternative: (site) => Object.keys(site.alternatives),
  offcut: (site) => Object.keys(site.offcuts),
  'town-rule': (site) => Object.keys(site.townRules),
  observation: (site) => Object.keys(site.observations),
  underlay: (site) => Object.keys(site.underlays),
  tie: (site) => Object.values(site.underlays).flatMap(({ ties }) => Object.keys(ties)),
  spec: (site) => Object.keys(site.specs),
  hardware: (site) => Object.keys(site.hardware),
};

/**
 * The first `count` ids of a kind that a site does not use, with rising numbers from 1. The same
 * site always gives the same ids.
 */
export const nextIds = <Kind extends IdKind>(
  site: Site,
  kind: Kind,
  count: number,
): `${Kind}:${string}`[] => {
  const used = new Set(idsOf[kind](site));
  const free: `${Kind}:${string}`[] = [];
  for (let number = 1; free.length < count; number += 1) {
    const id = `${kind}:${number}` as const;
    if (!used.has(id)) free.push(id);
  }
  return free;
};

/** The first id of a kind that a site does not use: what the next edit that adds one will use. */
export const nextId = <Kind extends IdKind>(site: Site, kind: Kind): `${Kind}:${string}` =>
  nextIds(site, kind, 1)[0] ?? `${kind}:1`;
