import { describe, expect, it } from 'vitest';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { termsOf } from '../../../src/engine/gate/termsOf.ts';
import { partWords } from '../../../src/screens/book/partWords.ts';
import { catchFault } from '../../../src/screens/plans/catchFault.ts';
import { changeHardware } from '../../../src/site/edits/changeHardware.ts';
import { measureHardware } from '../../../src/site/edits/measureHardware.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import type { HardwareId, LeafId } from '../../../src/site/ids.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { drive, yard } from '../../drawing/orders/signedYard.ts';

const takes = (low: number, planned: number, high: number) => ({
  low: inches(low),
  planned: inches(planned),
  high: inches(high),
});
const words = partWords('drop rod', { system: 'inches', fraction: 8 });

/** Two leaves of 56 1/4 on hinges measured 1 3/4, 1 7/8 and 2: common practice, no published source. */
const gate = yard.gates[drive];
if (gate === undefined || gate.latch === null) throw new Error('expected the drive gate');
const rod: HardwareId = gate.latch;
const leaves = Object.keys(gate.leaves) as LeafId[];
const hinge = Object.values(gate.leaves)[0]?.hinge ?? 'hardware:none';
const wide = leaves.reduce(
  (so: Site, id) => setGateLeaf(so, drive, id, { widths: oneWidth(inches(56.25)) }),
  yard,
);
const measured = measureHardware(wide, hinge, [1.75, 1.875, 2].map(inches), '');

describe('catchFault', () => {
  const fork = changeHardware(measured, rod, { takes: takes(2, 2, 3) });

  it('takes a fork that is met for sure, if only by one opening', () => {
    // 112 1/2 + 4 + 2 = 118 1/2 = 112 1/2 + 3 1/2 + 2 1/2
    expect(catchFault(fork, { id: rod, takes: takes(2, 2, 2.5), words })).toBeNull();
    const drawn = fork.gates[drive];
    if (drawn === undefined) throw new Error('expected the drive gate');
    expect(openingOf(termsOf(drawn, fork)).target).toBe(118.5);
  });

  it('refuses one that no opening meets for sure, by how much the hinges may differ', () => {
    const fault = catchFault(fork, { id: rod, takes: takes(2, 2, 2.375), words });
    expect(fault).toBe(
      'Catches to 2 3/8": no opening meets this catch for sure, for the hinges and leaves of Drive gate may differ by 1/2": expected a longer reach, or measure the hinges first',
    );
  });

  it('does not stand in the way where no opening was sure before', () => {
    const short = changeHardware(fork, rod, { takes: takes(2, 2, 2.25) });
    expect(catchFault(short, { id: rod, takes: takes(2, 2, 2.375), words })).toBeNull();
  });
});
