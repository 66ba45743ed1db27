import { metName } from '../../engine/checks/metName.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import { mayOpen, type FreeSwing } from '../../engine/sweep/mayOpen.ts';
import type { Site } from '../../site/site.ts';
import { formatAngle } from '../../units/formatAngle.ts';
import { radians } from '../../units/radians.ts';

/** A last bit of an angle keeps no gate shut. */
const hair = 1e-9;

const leads = {
  'true true': 'either way',
  'true false': 'only the way it opens now',
  'false true': 'only the other way',
  'false false': 'neither way',
} as const;

const metAt = (site: Site, { stop, over }: FreeSwing): string[] => [
  ...(over === null ? [] : [`swings over ${metName(site, over.met)}`]),
  ...(stop === null ? [] : [`meets ${metName(site, stop.met)} at ${formatAngle(stop.turned)}`]),
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
    ['This way', now],
    ['The other way', other],
  ] as const;
  const met = told.flatMap(([way, swing]) => {
    const says = metAt(site, swing);
    return says.length === 0 ? [] : [` ${way} it ${says.join(' and ')}.`];
  });
  const lead = leads[`${here === true} ${there === true}`];
  return `${lead} by ${formatAngle(radians(planned))}.${met.join('')}`;
};
