import { inches, type Inches } from '../../units/inches.ts';
import type { Gate } from '../../site/gate.ts';
import type { GateLayout } from '../layout.ts';
import { clearPassage, standsIn } from './clearPassage.ts';

/**
 * The clear passage of a gate with one of its leaves open and the other closed, inches: of two leaves that
 * turn the wider, its own part of the opening (hinge, leaf and the gap at its latch) less what it takes
 * when it stands open. Of every other gate all of it.
 */
export const onePassage = (gate: Pick<Gate, 'way'>, laid: GateLayout): Inches => {
  if (laid.leaves.length < 2) return clearPassage(gate, laid).clear;
  const hinges = laid.opening.terms.filter(({ role }) => role === 'hinge');
  const taken = laid.opening.terms.reduce(
    (sum, { role, planned }) => (role === 'hinge' || role === 'leaf' ? sum + planned : sum),
    0,
  );
  const gap = laid.opening.target - taken;
  const each = laid.leaves.map((leaf, n) => {
    const hinge = hinges[n]?.planned ?? inches(0);
    return hinge + leaf.width + gap - standsIn(leaf, hinge);
  });
  return inches(Math.max(...each));
};
