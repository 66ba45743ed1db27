import { balanceTable, courseTable } from '../../../drawing/tables/callTables.ts';
import { pieceText } from '../../../drawing/tables/pieceText.ts';
import { callRemarks, type CallRemark } from '../../../engine/calls/callRemarks.ts';
import type { CallPiece } from '../../../engine/calls/calls.ts';
import { closureText } from '../../../engine/calls/closureText.ts';
import { joined, phrase, phraseOf } from '../../../phrases/phrase.ts';
import { formatArea } from '../../../units/formatArea.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { TableView } from '../../TableView.tsx';
import { LotSketch } from './LotSketch.tsx';
import type { ReadCalls } from './useCalls.ts';

const words = { stop: phraseOf('flag')`Stop`, caution: phrase`Caution` } as const;

const isUnread = ({ found }: CallPiece): boolean =>
  found.kind === 'fault' || found.kind === 'words';

const Remarks = ({ remarks }: { readonly remarks: readonly CallRemark[] }) => (
  <ul className="plain call-remarks">
    {remarks.map(({ level, text }) => (
      <li key={text} className={`call-remark ${level}`}>
        <b>{words[level]}</b> {text}
      </li>
    ))}
  </ul>
);

/** What came of a piece; of one that was not understood only why, since its heading says the rest. */
const reasonOf = (piece: CallPiece, style: LengthStyle): string => {
  const { found } = piece;
  if (found.kind === 'words') return found.reason;
  return found.kind === 'fault'
    ? phrase`A side is missing: ${found.reason}`
    : pieceText(piece, style);
};

interface PiecesProps {
  readonly title: string;
  readonly pieces: readonly CallPiece[];
  readonly style: LengthStyle;
  readonly say?: (piece: CallPiece, style: LengthStyle) => string;
}

/** Pieces of the text with the line in which each stands and what came of it. */
const Pieces = ({ title, pieces, style, say = pieceText }: PiecesProps) => (
  <section aria-label={title}>
    <h3>{title}</h3>
    <ul className="plain">
      {pieces.map((piece, n) => (
        <li key={`${piece.line} ${n}`} className="call-piece">
          <span>
            <b>{phrase`Line ${piece.line}`}</b> <q>{piece.text}</q>
          </span>
          <span className={piece.found.kind === 'fault' ? 'fault' : 'note'}>
            {say(piece, style)}
          </span>
          {piece.doubts.map((doubt) => (
            <span key={doubt} className="call-doubt">
              {doubt}
            </span>
          ))}
        </li>
      ))}
    </ul>
  </section>
);

const countText = ({ calls }: ReadCalls): string => {
  const unread = calls.pieces.filter(isUnread).length;
  const [sides, ties] = [calls.courses.length, calls.ties.length];
  const counted = [
    sides === 1 ? phrase`1 side of the lot` : phrase`${sides} sides of the lot`,
    ...(ties === 0
      ? []
      : [ties === 1 ? phrase`1 tie to its beginning` : phrase`${ties} ties to its beginning`]),
  ];
  const found = joined(counted, ', ');
  return unread === 0
    ? phrase`${found}; every line was understood.`
    : phrase`${found}; ${unread} not understood.`;
};

/** A sketch of the calls beside how they close and what they enclose. */
const Sums = ({ told, terms: { style } }: ReadCalls) => (
  <div className="call-sums">
    <LotSketch told={told} />
    <div className="stack">
      <p>{closureText(told, style)}</p>
      <p>
        {phrase`Perimeter`} <b>{formatLength(told.perimeter, style)}</b>
      </p>
      {told.lot !== null && (
        <p>
          {phrase`Area, balanced`} <b>{formatArea(told.lot.area)}</b>
        </p>
      )}
    </div>
  </div>
);

const Balance = ({ told, terms: { style } }: ReadCalls) => (
  <details className="more">
    <summary>{phrase`How they were balanced`}</summary>
    <p className="note">
      {phrase`By the compass rule: the misclosure is shared out by the length of the courses, curves by their chords. Curves keep their central angle.`}
    </p>
    <TableView table={balanceTable(told, style)} />
  </details>
);

/** What came of the calls: how they close, what is in doubt, each course, and what was not understood. */
export const CallsResults = (read: ReadCalls) => {
  const { calls, told, terms } = read;
  const { style } = terms;
  const unread = calls.pieces.filter(isUnread);
  const doubtful = calls.pieces.filter((piece) => !isUnread(piece) && piece.doubts.length > 0);
  return (
    <>
      <section aria-label={phrase`What the calls come to`}>
        <p className="call-count" role="status">
          {countText(read)}
        </p>
        <Remarks remarks={callRemarks(calls, told, terms)} />
        {told.courses.length > 0 && <Sums {...read} />}
      </section>
      {unread.length > 0 && (
        <Pieces title={phrase`Not understood`} pieces={unread} style={style} say={reasonOf} />
      )}
      {doubtful.length > 0 && (
        <Pieces title={phrase`Worth a look`} pieces={doubtful} style={style} />
      )}
      {calls.courses.length > 0 && (
        <TableView table={courseTable(calls.courses, { title: phrase`Courses`, style })} />
      )}
      {calls.ties.length > 0 && (
        <TableView
          table={courseTable(calls.ties, { title: phrase`Ties to the point of beginning`, style })}
        />
      )}
      {told.lot !== null && <Balance {...read} />}
      <details className="more">
        <summary>{phrase`Every line as it was read`}</summary>
        <Pieces title={phrase`All lines`} pieces={calls.pieces} style={style} />
      </details>
    </>
  );
};
