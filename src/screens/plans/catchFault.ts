import { openingOf } from '../../engine/gate/openingOf.ts';
import { termsOf } from '../../engine/gate/termsOf.ts';
import type { Opening } from '../../engine/opening.ts';
import { slack } from '../../geometry/tolerance.ts';
import { phrase } from '../../phrases/phrase.ts';
import { changeHardware } from '../../site/edits/changeHardware.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { PartWords } from '../../site/partFault.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';

/** A catch typed for a latch of a site, and the words for its sizes. */
export interface TypedCatch {
  readonly id: HardwareId;
  readonly takes: Hardware['takes'];
  readonly words: PartWords;
}

/** How much the sizes of an opening that are not sure may differ together, in inches. */
const unsure = ({ terms }: Opening): Inches =>
  inches(
    terms
      .filter(({ spread }) => spread === 'uncertain')
      .reduce((all, { low, high }) => all + high - low, 0),
  );

const sure = ({ holdsFrom, holdsTo }: Opening): boolean => holdsFrom <= holdsTo + slack;

/**
 * One line where a latch typed with these sizes would leave a gate without any opening that holds
 * for sure, which it had before; else null.
 */
export const catchFault = (site: Site, { id, takes, words }: TypedCatch): string | null => {
  const next = changeHardware(site, id, { takes });
  for (const gate of Object.values(site.gates)) {
    if (gate.latch !== id) continue;
    const [before, after] = [site, next].map((one) => openingOf(termsOf(gate, one)));
    if (before === undefined || after === undefined || !sure(before) || sure(after)) continue;
    const name = gate.label === '' ? phrase`the gate` : gate.label;
    return phrase`${words.high} ${words.write(takes.high)}: no opening meets this catch for sure, for the hinges and leaves of ${name} may differ by ${words.write(unsure(after))}: expected a longer reach, or measure the hinges first`;
  }
  return null;
};
