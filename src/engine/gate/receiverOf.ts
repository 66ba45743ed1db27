import { midpoint } from '../../geometry/midpoint.ts';
import type { Gate } from '../../site/gate.ts';
import { receiverHole } from '../../trade/receivers.ts';
import { radians } from '../../units/radians.ts';
import type { GateLayout, LeafLayout } from '../layout.ts';
import { leafTip } from './swing.ts';

/**
 * What the drop rod of two leaves drops into: in the middle of the gap between their frames when
 * they are closed, with the hole to make for it. Null where nobody has said what it is, and for a
 * gate whose leaves do not meet.
 */
export const receiverOf = (
  { way, receiver }: Gate,
  leaves: readonly LeafLayout[],
): GateLayout['receiver'] => {
  const [one, other] = leaves;
  if (receiver === null || way.kind !== 'swing' || one === undefined || other === undefined) {
    return null;
  }
  const shut = radians(0);
  const at = midpoint(leafTip(one, shut), leafTip(other, shut));
  const { diameter, source } = receiverHole(receiver.kind, receiver.inside);
  return { at, hole: { diameter, depth: receiver.depth, source: source.text } };
};
