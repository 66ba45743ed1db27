import { addGate } from '../site/edits/addGate.ts';
import { addHardware } from '../site/edits/addHardware.ts';
import { inches } from '../units/inches.ts';
import type { Anchor } from '../site/anchor.ts';
import type { Gate } from '../site/gate.ts';
import type { GateId } from '../site/ids.ts';
import { oneWidth } from '../site/oneWidth.ts';
import { nextId } from '../site/nextId.ts';
import type { Site } from '../site/site.ts';
import type { GatePlan } from '../store/plans.ts';
import type { Aim } from './aim.ts';
import { anchorNear } from './gateAnchor.ts';
import { gateSpan } from './gateSpan.ts';
import { legNear } from './legNear.ts';

/** A gate that is not yet decided for: the site that has it, and under which id. */
export interface PlannedGate {
  readonly site: Site;
  readonly id: GateId;
}

/** How far from fence a hand still means it, in reaches. */
const farthest = 8;

/** A leg of a fence line. */
type OnLeg = Pick<Gate, 'line' | 'leg'>;

const gated = (
  site: Site,
  plan: GatePlan,
  { line, leg }: OnLeg,
  anchorOf: (trial: Gate, stocked: Site) => Anchor,
): PlannedGate | null => {
  const parts = [plan.latch, ...plan.leaves.map(({ hinge }) => hinge)];
  const stocked = parts.reduce((so, { id, hardware }) => addHardware(so, id, hardware), site);
  const { label, opens, hingedAt, nominal, post, latch } = plan;
  const id = nextId(stocked, 'gate');
  const leaves = plan.leaves.map(({ width, from, hinge }) => ({
    widths: oneWidth(width),
    from,
    hinge: hinge.id,
  }));
  const fields = { label, line, leg, leaves, latch: latch.id, opens, hingedAt, nominal, post };
  const centred = { from: 'middle', offset: inches(0) } as const;
  const trial = addGate(stocked, { ...fields, anchor: centred }).gates[id];
  if (trial === undefined) return null;
  return { site: addGate(stocked, { ...fields, anchor: anchorOf(trial, stocked) }), id };
};

/**
 * The planned gate on the leg nearest to the hand, with the hardware that the site did not carry
 * yet. Null where no fence is near. Whether it fits is for the engine to say.
 */
export const plannedGate = (
  site: Site,
  plan: GatePlan,
  { at, reach, free }: Pick<Aim, 'at' | 'reach' | 'free'>,
): PlannedGate | null => {
  const place = legNear(site, at);
  if (place === null || place.away > farthest * reach) return null;
  const { length, station } = place;
  return gated(site, plan, place, (trial, stocked) =>
    anchorNear({
      length,
      station,
      span: gateSpan(stocked, trial),
      reach: free ? inches(0) : reach,
      system: site.lengths.system,
    }),
  );
};

/**
 * The planned gate on a leg that was named, anchored exactly as it was told. RangeError for an unknown
 * line or leg. Whether it fits is for the engine to say.
 */
export const toldGate = (
  site: Site,
  plan: GatePlan,
  on: OnLeg,
  anchor: Anchor,
): PlannedGate | null => gated(site, plan, on, () => anchor);
