import { slack } from '../../geometry/tolerance.ts';
import { readWidths } from '../../site/readWidths.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

/** To this the trade measures a leaf, in inches (common practice, no published source). */
const outOfTrue = 1 / 8;

const notMeasured = ({ id }: GateLayout, site: Site): GateFlag[] => {
  const gate = site.gates[id];
  if (gate === undefined) return [];
  const open = leavesOf(gate).flatMap(({ from }, n) =>
    from === 'measured'
      ? []
      : [from === 'copied' ? phrase`${n + 1} is copied` : phrase`${n + 1} is from a catalogue`],
  );
  if (open.length === 0) return [];
  const message = phrase`${gateName(site, id)}: leaf ${joined(open, phrase`, leaf `)}: measure every leaf at top and bottom.`;
  return [{ level: 'settle', rule: 'leaf not measured', message }];
};

const notTrue = ({ id }: GateLayout, site: Site): GateFlag[] => {
  const gate = site.gates[id];
  if (gate === undefined) return [];
  const write = (length: number): string => formatLength(inches(length), fineStyle(site.lengths));
  return leavesOf(gate).flatMap(({ widths }, n) => {
    const read = readWidths(widths);
    const [least, most] = [Math.min(...read), Math.max(...read)];
    if (most - least <= outOfTrue + slack) return [];
    const message = phrase`${gateName(site, id)}: leaf ${n + 1} is out of true, from ${write(least)} to ${write(most)}: true it or send it back; the opening is planned for the larger.`;
    return [{ level: 'settle', rule: 'leaf out of true', message } as const];
  });
};

/** Leaves that nobody measured, and leaves that are not as wide at the top as at the bottom. */
export const checkLeaves = (site: Site, laid: LaidLines): Flag[] =>
  Object.values(laid.gates).flatMap((gate) =>
    plantedAt(gate, [...notMeasured(gate, site), ...notTrue(gate, site)]),
  );
