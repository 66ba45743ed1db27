import type { CallPiece } from '../../engine/calls/calls.ts';
import { formatArea } from '../../units/formatArea.ts';
import { formatBearing } from '../../units/formatBearing.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

const parts = {
  lot: (call: string) => call,
  tie: (call: string) => phrase`tie, no side of the lot: ${call}`,
  after: (call: string) => phrase`not drawn: ${call}`,
} as const;

const rounds = {
  left: phrase`, curve to the left`,
  right: phrase`, curve to the right`,
} as const;

/** What came of one piece of a text of calls, in one line without its doubts. */
export const pieceText = ({ found }: CallPiece, style: LengthStyle): string => {
  switch (found.kind) {
    case 'course': {
      const { azimuth, length, curve } = found.course;
      const round = curve === null ? '' : rounds[curve.side];
      return parts[found.part](`${formatBearing(azimuth)} ${formatLength(length, style)}${round}`);
    }
    case 'start':
      return found.at === '' ? phrase`begins` : phrase`begins at ${found.at}`;
    case 'area':
      return phrase`area ${formatArea(found.area)}`;
    case 'fault':
      return phrase`not understood, a side is missing: ${found.reason}`;
    case 'words':
      return phrase`not understood: ${found.reason}`;
  }
};
