import { exactStyle } from '../../../drawing/orders/exactStyle.ts';
import { heldTexts } from '../../../drawing/opening/heldTexts.ts';
import type { Opening, Term } from '../../../engine/opening.ts';
import { joined, phrase } from '../../../phrases/phrase.ts';
import type { Hardware } from '../../../site/hardware.ts';
import type { HardwareId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { Inches } from '../../../units/inches.ts';
import { workedOut, type Reason } from './reason.ts';

type Write = (length: Inches) => string;

const hingeText = ({ label, low, planned, high, spread }: Term, write: Write): string => {
  if (low === high) return phrase`${label}: takes ${write(planned)} from post to frame.`;
  return spread === 'adjustable'
    ? phrase`${label}: set anywhere from ${write(low)} to ${write(high)}, planned at ${write(planned)}.`
    : phrase`${label}: takes somewhere from ${write(low)} to ${write(high)}, planned at ${write(planned)}. Posts too near cannot be mended; a little too far is taken up by the latch.`;
};

const leafText = ({ label, low, planned }: Term, write: Write): string =>
  low === planned
    ? phrase`${label}: ${write(planned)} wide, out to out.`
    : phrase`${label}: ${write(planned)} wide, out to out; of all its widths the largest has to go in.`;

const texts: Readonly<Record<Term['role'], (term: Term, write: Write) => string>> = {
  leaf: leafText,
  hinge: hingeText,
  latch: ({ label, low, planned, high }, write) =>
    phrase`${label}: catches at a gap from ${write(low)} to ${write(high)}, planned at ${write(planned)}.`,
  stop: ({ label, planned }, write) => phrase`${label}: ${write(planned)} wide.`,
  overlap: ({ label, planned }, write) =>
    phrase`${label}: ${write(planned)}, since the leaf is longer than what it closes.`,
  gap: ({ label, planned }, write) => phrase`${label}: ${write(planned)} clear, as it was planned.`,
};

const partOf = ({ hardware }: Pick<Site, 'hardware'>, { of }: Term): Hardware | undefined =>
  hardware[of as HardwareId];

/** Where a term is from: who measured or assumed it, on what day, and on what an assumed size rests. */
const sourceOf = (site: Pick<Site, 'hardware'>, term: Term): string => {
  const part = partOf(site, term);
  const rests = part?.from === 'assumed' ? part.remark : '';
  return joined(
    [term.source, term.on, rests].filter((text) => text !== ''),
    '; ',
  );
};

/** Why an opening is so wide: what takes up room in it, then what that makes and from where to where it holds. */
export const openingReasons = (
  opening: Opening,
  site: Pick<Site, 'hardware' | 'lengths'>,
): readonly Reason[] => {
  const { terms, target } = opening;
  const style = exactStyle(
    terms.flatMap(({ low, planned, high }) => [low, planned, high]),
    site.lengths,
  );
  const write: Write = (length) => formatLength(length, style);
  const held = heldTexts(opening, site.lengths);
  return [
    ...terms.map((term) => ({
      says: texts[term.role](term, write),
      source: sourceOf(site, term),
    })),
    {
      says: phrase`Together ${write(target)}, from inside face to inside face of the gate posts.`,
      source: workedOut,
    },
    {
      says:
        held === null
          ? phrase`No opening holds for sure: the unsure parts may differ by more than the latch makes up for.`
          : phrase`From ${held.from} to ${held.to} it holds whatever the true size of each unsure part.`,
      source: workedOut,
    },
  ];
};
