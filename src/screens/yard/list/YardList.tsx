import './list.css';
import { useRef, type KeyboardEvent } from 'react';
import { rowOf } from '../../../editor/list/rowOf.ts';
import { yardList } from '../../../editor/list/yardList.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { useBench, useLayout, useSession, useSite } from '../../bench.ts';
import { plainDeed } from '../../help/keys/keyRow.ts';
import { useStored } from '../../useStored.ts';
import { FigureEntry } from '../FigureEntry.tsx';
import { TypedEntry } from '../TypedEntry.tsx';
import { Chosen } from './Chosen.tsx';
import { DrawByWords } from './DrawByWords.tsx';
import { listKeys } from './rowKeys.ts';
import { ListRows } from './ListRows.tsx';
import { useListFocus } from './useListFocus.ts';

interface Props {
  /** Another object each time that the list is asked for: it takes the focus then. */
  readonly asked: object;
  readonly onClose: () => void;
  /** Goes to the card of what is selected. */
  readonly onCard: () => void;
}

const empty = phrase`Nothing is drawn yet. Choose what to draw, say where it begins, then type each length and its direction. What is drawn is listed here, and on the pad.`;

/**
 * The yard as a list beside the pad: everything that is on the pad in words, selected there and here at
 * once, and all that is drawn or moved with a hand by typing it.
 */
export const YardList = ({ asked, onClose, onCard }: Props) => {
  const { session, sender } = useBench();
  const [site, layout] = [useSite(), useLayout()];
  const { selection, tool } = useSession((state) => state);
  const { piece, asked: figure } = useStored(sender.hand, (state) => state);
  const panel = useRef<HTMLElement>(null);
  const groups = yardList(site, layout);
  const chosen = rowOf(groups, selection);
  useListFocus(panel, asked, piece !== null);
  const leave = (event: KeyboardEvent) => {
    if (plainDeed(listKeys, event.key) !== 'leave' || event.defaultPrevented) return;
    event.preventDefault();
    if (tool === 'select') return onClose();
    sender.send({ do: 'leave' });
    session.setState({ tool: 'select' });
  };
  return (
    <section
      ref={panel}
      className="yardlist"
      role="region"
      aria-label={phrase`List of the yard`}
      onKeyDown={leave}
    >
      <div className="yardlist-head">
        <h2>{phrase`List of the yard`}</h2>
        <button type="button" onClick={onClose}>
          {phrase`Close list`}
        </button>
      </div>
      <div className="yardlist-body">
        <DrawByWords />
        {piece !== null && <TypedEntry piece={piece} begun={null} />}
        {figure !== null && <FigureEntry asked={figure} begun={null} />}
        {chosen !== null && piece === null && figure === null && (
          <Chosen row={chosen} onCard={onCard} />
        )}
        {groups.length === 0 ? (
          <p className="note">{empty}</p>
        ) : (
          <ListRows groups={groups} chosen={chosen} />
        )}
      </div>
    </section>
  );
};
