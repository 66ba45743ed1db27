import { slack } from '../../geometry/tolerance.ts';
import type { Gate, Leaf } from '../../site/gate.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId, LeafId } from '../../site/ids.ts';
import type { Inches } from '../../units/inches.ts';
import { leavesOf } from '../gate/termsOf.ts';
import { openingOf } from '../gate/openingOf.ts';
import type { Remedy } from './remedy.ts';
import { writer, type SetCase } from './setCase.ts';
import { gained, holdsAt, type Shortfall } from './shortfall.ts';
import { termsAsSet } from './termsAsSet.ts';
import { asItIs, phrase } from '../../phrases/phrase.ts';

/** Other hinges on some leaves of a gate, and what that is worth. */
interface Swap {
  readonly part: Hardware;
  readonly leaves: readonly LeafId[];
  readonly gains: Inches;
  readonly enough: boolean;
}

/** The gate with another hinge on some leaves, none of them measured on those. */
const swapped = (set: SetCase, hinge: HardwareId, on: readonly LeafId[]) => {
  const { gate, asSet } = set;
  const leaves = Object.fromEntries(
    (Object.entries(gate.leaves) as [LeafId, Leaf][]).map(([id, leaf]) => [
      id,
      on.includes(id) ? { ...leaf, hinge } : leaf,
    ]),
  );
  const measured = Object.fromEntries(
    Object.entries(asSet.hinges).filter(([id]) => !on.includes(id as LeafId)),
  );
  const other: Gate = { ...gate, leaves };
  return openingOf(termsAsSet(other, set.site, { ...asSet, hinges: measured }));
};

const within = (range: Hardware['fits']['post'], od: number | undefined): boolean =>
  range === null || od === undefined || (od >= range.low - slack && od <= range.high + slack);

/** Whether a hinge can be fixed to the gate posts as planned and to a leaf; what is not said can. */
const canHang = ({ site, gate }: SetCase, { fits }: Hardware, leaf: Leaf): boolean => {
  const spec = site.specs[site.lines[gate.line]?.spec ?? 'spec:'];
  const post = gate.post ?? spec?.gatePost;
  return within(fits.post, post?.od) && within(fits.frame, leaf.frame?.od);
};

const swapsOf = (set: SetCase, missing: Shortfall): Swap[] => {
  const leaves = leavesOf(set.gate);
  const choices = leaves.length > 1 ? [...leaves.map((leaf) => [leaf]), leaves] : [leaves];
  return (Object.entries(set.site.hardware) as [HardwareId, Hardware][]).flatMap(([id, part]) =>
    part.kind !== 'hinge'
      ? []
      : choices.flatMap((chosen): Swap[] => {
          if (chosen.some((leaf) => leaf.hinge === id || !canHang(set, part, leaf))) return [];
          const on = chosen.map((leaf) => leaf.id);
          const opening = swapped(set, id, on);
          const gains = gained(set.opening, opening, missing.way);
          if (gains <= slack) return [];
          return [{ part, leaves: on, gains, enough: holdsAt(opening, set.widths) }];
        }),
  );
};

/** The least change that is enough, else the one that reaches furthest. */
const bestOf = (swaps: readonly Swap[]): Swap | undefined =>
  swaps.toSorted(
    (a, b) =>
      Number(b.enough) - Number(a.enough) || (a.enough ? a.gains - b.gains : b.gains - a.gains),
  )[0];

const where = ({ gate }: SetCase, on: readonly LeafId[]): string => {
  const leaves = leavesOf(gate);
  if (leaves.length === 1) return phrase`the leaf`;
  if (on.length > 1) return phrase`both leaves`;
  return phrase`leaf ${leaves.findIndex(({ id }) => id === on[0]) + 1}`;
};

/** Another hinge of the site's hardware in place of the one planned; null where none is of use. */
export const hingeRemedy = (set: SetCase, missing: Shortfall): Remedy | null => {
  if (leavesOf(set.gate).some(({ hinge }) => hinge === null)) return null;
  const best = bestOf(swapsOf(set, missing));
  if (best === undefined) return null;
  const write = writer(set);
  const { low, high } = best.part.takes;
  const takes = low === high ? write(low) : phrase`${write(low)} to ${write(high)}`;
  const [on, part] = [where(set, best.leaves), asItIs(best.part.label)];
  const [gains, by] = [write(best.gains), write(missing.by)];
  return {
    kind: 'other hinge',
    what:
      missing.way === 'room'
        ? phrase`Hang ${on} on another hinge: ${part} takes ${gains} less.`
        : phrase`Hang ${on} on another hinge: ${part} takes ${gains} more.`,
    takesUp: best.gains,
    enough: best.enough,
    working:
      missing.way === 'room'
        ? phrase`${part} takes ${takes}; ${by} is missing`
        : phrase`${part} takes ${takes}; ${by} is over`,
    post: null,
  };
};
