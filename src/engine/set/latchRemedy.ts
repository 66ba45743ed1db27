import { slack } from '../../geometry/tolerance.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { Inches } from '../../units/inches.ts';
import { gapAt } from '../gate/gapAt.ts';
import { openingOf } from '../gate/openingOf.ts';
import type { Opening } from '../opening.ts';
import type { Remedy } from './remedy.ts';
import { onTape, writer, type SetCase } from './setCase.ts';
import { gained, holdsAt, type Shortfall } from './shortfall.ts';
import { termsAsSet } from './termsAsSet.ts';
import { asItIs, phrase } from '../../phrases/phrase.ts';

interface Choice {
  readonly part: Hardware;
  readonly opening: Opening;
  readonly gains: Inches;
}

/** Latches of the site of the kind that the gate has, other than its own. */
const others = (set: SetCase, missing: Shortfall): Choice[] => {
  const { site, gate, asSet } = set;
  const own = gate.latch === null ? undefined : site.hardware[gate.latch]?.kind;
  return (Object.entries(site.hardware) as [HardwareId, Hardware][])
    .filter(([id, { kind }]) => kind === own && id !== gate.latch)
    .map(([latch, part]) => {
      const opening = openingOf(termsAsSet({ ...gate, latch }, site, asSet));
      return { part, opening, gains: gained(set.opening, opening, missing.way) };
    });
};

/** What each latch must catch: for sure, and with all of the size that is planned. */
const asked = ({ opening, widths }: SetCase) => {
  const gaps = widths.map((width) => gapAt(opening, width));
  const each = opening.terms.filter(({ spread }) => spread === 'catch').length;
  const ends = gaps.flatMap(({ sureWith }) => [sureWith.low / each, sureWith.high / each]);
  const planned = gaps.map((gap) => gap.planned / each);
  return {
    sure: { low: Math.min(...ends), high: Math.max(...ends) },
    planned: { low: Math.min(...planned), high: Math.max(...planned) },
  };
};

/**
 * A latch that reaches: one of the site's hardware where one does, else which it would have to be.
 * Null where the gap is nothing: no latch makes room for the leaves.
 */
export const latchRemedy = (set: SetCase, missing: Shortfall): Remedy | null => {
  const { sure, planned } = asked(set);
  if (sure.low <= slack) return null;
  const write = writer(set);
  const [low, high] = [onTape(set, sure.low, 'floor'), onTape(set, sure.high, 'ceil')];
  const range = low === high ? write(low) : phrase`from ${write(low)} to ${write(high)}`;
  const sizes =
    planned.high - planned.low <= slack
      ? write(planned.low)
      : phrase`${write(planned.low)} to ${write(planned.high)}`;
  const working = phrase`at the planned sizes the gap is ${sizes}; a latch that catches ${range} catches for sure`;
  const [found] = others(set, missing)
    .filter(({ opening }) => holdsAt(opening, set.widths))
    .toSorted((a, b) => a.gains - b.gains);
  const common = { kind: 'other latch', working, post: null } as const;
  if (found === undefined) {
    const what = phrase`Take a latch that catches ${range}: none of this site's hardware does.`;
    return { ...common, what, takesUp: missing.by, enough: false };
  }
  const { label, takes } = found.part;
  const what = phrase`Take another latch: ${asItIs(label)} catches from ${write(takes.low)} to ${write(takes.high)}.`;
  return { ...common, what, takesUp: found.gains, enough: true };
};
