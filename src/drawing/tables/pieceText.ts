import type { CallPiece } from '../../engine/calls/calls.ts';
import { formatArea } from '../../units/formatArea.ts';
import { formatBearing } from '../../units/formatBearing.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

const parts = { lot: '', tie: 'tie, no side of the lot: ', after: 'not drawn: ' } as const;

/** What came of one piece of a text of calls, in one line without its doubts. */
export const pieceText = ({ found }: CallPiece, style: LengthStyle): string => {
  switch (found.kind) {
    case 'course': {
      const { azimuth, length, curve } = found.course;
      const round = curve === null ? '' : `, curve to the ${curve.side}`;
      return `${parts[found.part]}${formatBearing(azimuth)} ${formatLength(length, style)}${round}`;
    }
    case 'start':
      return `begins${found.at === '' ? '' : ` at ${found.at}`}`;
    case 'area':
      return `area ${formatArea(found.area)}`;
    case 'fault':
      return `not understood, a side is missing: ${found.reason}`;
    case 'words':
      return `not understood: ${found.reason}`;
  }
};
