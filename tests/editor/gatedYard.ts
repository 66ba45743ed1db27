import { oneWidth } from '../../src/site/oneWidth.ts';
import type { Gate } from '../../src/site/gate.ts';
import { addGate } from '../../src/site/edits/addGate.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { samplePlans } from '../store/samplePlans.ts';
import { yard } from './yard.ts';

const { gate: plan } = samplePlans;

/**
 * The yard with one walk gate in the first leg of its back fence (from (360, 0) 480 in east). Its
 * opening is 42 + 1 + 1.5 = 44.5 in, its posts 2.375 in, so they stand 46.875 in apart.
 */
export const gatedYard = (anchor: { from: Gate['anchor']['from']; offset: number }): Site => {
  const [leaf] = plan.leaves;
  const stocked: Site = {
    ...yard,
    hardware: Object.fromEntries(
      [plan.latch, ...(leaf ? [leaf.hinge] : [])].map(({ id, hardware }) => [id, hardware]),
    ),
  };
  return addGate(stocked, {
    label: 'Walk gate',
    line: 'line:fence',
    leg: 'vertex:fence1',
    anchor: { from: anchor.from, offset: inches(anchor.offset) },
    leaves: leaf ? [{ widths: oneWidth(leaf.width), from: leaf.from, hinge: leaf.hinge.id }] : [],
    latch: plan.latch.id,
    opens: 'left',
    hingedAt: 'start',
    nominal: null,
    post: null,
  });
};
