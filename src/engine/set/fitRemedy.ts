import { leavesOf } from '../gate/termsOf.ts';
import type { Remedy } from './remedy.ts';
import { onTape, writer, type SetCase } from './setCase.ts';
import { holdsShifted, type Shortfall } from './shortfall.ts';
import { phrase } from '../../phrases/phrase.ts';

/** To make a leaf narrower where room is missing, or to pack hinges out where the gap is too wide. */
export const fitRemedy = (set: SetCase, { way, by: missing }: Shortfall): Remedy => {
  const write = writer(set);
  const by = onTape(set, missing, 'ceil');
  const enough = holdsShifted(set.opening, set.widths, { way, by });
  const working =
    way === 'room' ? phrase`${write(missing)} is missing` : phrase`${write(missing)} is over`;
  const common = { takesUp: 'unlimited', enough, working, post: null } as const;
  const all = leavesOf(set.gate).length > 1 ? phrase` in all` : '';
  if (way === 'room') {
    const leaves = all === '' ? phrase`the leaf` : phrase`a leaf, or both`;
    return { ...common, kind: 'trim', what: phrase`Have ${leaves} trimmed by ${write(by)}${all}.` };
  }
  const rolls = set.gate.way.kind === 'cantilever';
  const what = rolls
    ? phrase`Shim the latch out from its post by ${write(by)}, or have the leaf made that much longer.`
    : phrase`Shim the hinges out from their posts by ${write(by)}${all}, or have a leaf made that much wider.`;
  return { ...common, kind: 'shim', what };
};
