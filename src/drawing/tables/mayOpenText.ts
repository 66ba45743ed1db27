import { metName } from '../../engine/checks/metName.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import { mayOpen, type FreeSwing } from '../../engine/sweep/mayOpen.ts';
import type { Site } from '../../site/site.ts';
import { formatAngle } from '../../units/formatAngle.ts';
import { radians } from '../../units/radians.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A last bit of an angle keeps no gate shut. */
const hair = 1e-9;

const leads = {
  'true true': (by: string) => phrase`either way by ${by}`,
  'true false': (by: string) => phrase`only the way it opens now by ${by}`,
  'false true': (by: string) => phrase`only the other way by ${by}`,
  'false false': (by: string) => phrase`neither way by ${by}`,
} as const;

const metAt = (site: Site, { stop, over }: FreeSwing): string[] => [
  ...(over === null ? [] : [phrase`swings over ${metName(site, over.met)}`]),
  ...(stop === null
    ? []
    : [phrase`meets ${metName(site, stop.met)} at ${formatAngle(stop.turned)}`]),
];

/**
 * Which way the leaves of a gate may open by as much as they are to, and what they meet the way
 * they open now and the other way, to follow “may open”. Null for a gate that has no leaf on hinges or is not placed.
 */
export const mayOpenText = (
  site: Site,
  layout: Pick<Layout, 'lines' | 'posts' | 'gates'>,
  gate: GateLayout,
): string | null => {
  const drawn = site.gates[gate.id];
  const [leaf] = gate.leaves;
  if (drawn === undefined || leaf === undefined || !gate.placed) return null;
  const { left, right } = mayOpen(site, layout, gate);
  const [now, other] = drawn.opens === 'left' ? [left, right] : [right, left];
  const planned = Math.abs(leaf.turns);
  const [here, there] = [now, other].map(({ free }) => free >= planned - hair);
  const told = [
    [(says: string) => phrase`This way it ${says}.`, now],
    [(says: string) => phrase`The other way it ${says}.`, other],
  ] as const;
  const met = told.flatMap(([say, swing]) => {
    const [first, second] = metAt(site, swing);
    if (first === undefined) return [];
    return [` ${say(second === undefined ? first : phrase`${first} and ${second}`)}`];
  });
  const lead = leads[`${here === true} ${there === true}`];
  return `${lead(formatAngle(radians(planned)))}.${met.join('')}`;
};
