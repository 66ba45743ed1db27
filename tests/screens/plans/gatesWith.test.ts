import { expect, it } from 'vitest';
import { gatesWith } from '../../../src/screens/plans/gatesWith.ts';
import { drive, yard } from '../../drawing/orders/signedYard.ts';

it('counts gates, not leaves', () => {
  const gate = yard.gates[drive];
  const [leaf] = Object.values(gate?.leaves ?? {});
  // the drive gate has two leaves on the hinge that the walk gate's leaf hangs on too
  expect(gatesWith(yard, leaf?.hinge ?? 'hardware:none')).toBe(2);
  expect(gatesWith(yard, gate?.latch ?? 'hardware:none')).toBe(1);
  expect(gatesWith(yard, 'hardware:none')).toBe(0);
});
