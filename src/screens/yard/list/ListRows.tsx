import { useState, type KeyboardEvent } from 'react';
import { withAllRows, type ListGroup, type ListRow } from '../../../editor/list/listRow.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { useBench } from '../../bench.ts';
import { centreOn } from '../../centreOn.ts';
import { plainDeed } from '../../help/keys/keyRow.ts';
import { rowKeys } from './rowKeys.ts';

interface Props {
  readonly groups: readonly ListGroup[];
  /** The row of what is selected. */
  readonly chosen: ListRow | null;
}

/** Where a key leads from a row among so many; null for a key that leads nowhere. */
const nextRow = (key: string, from: number, of: number): number | null => {
  const deed = plainDeed(rowKeys, key);
  if (deed === 'down') return Math.min(of - 1, from + 1);
  if (deed === 'up') return Math.max(0, from - 1);
  if (deed === 'first') return 0;
  return deed === 'last' ? of - 1 : null;
};

interface RowProps {
  readonly row: ListRow;
  readonly chosen: ListRow | null;
  /** The row that Tab leads to. */
  readonly stop: string | undefined;
  readonly onRow: (row: ListRow) => void;
  readonly onStop: (key: string) => void;
}

const Row = (props: RowProps) => {
  const { row, chosen, stop, onRow, onStop } = props;
  return (
    <li>
      <button
        type="button"
        data-row
        aria-pressed={row.key === chosen?.key}
        tabIndex={row.key === stop ? 0 : -1}
        onClick={() => onRow(row)}
        onFocus={() => onStop(row.key)}
      >
        {row.words}
      </button>
      {row.rows.length > 0 && (
        <ul>
          {row.rows.map((one) => (
            <Row {...props} key={one.key} row={one} />
          ))}
        </ul>
      )}
    </li>
  );
};

/** Everything in the yard, a row each: one press selects it, the arrows go from row to row. */
export const ListRows = ({ groups, chosen }: Props) => {
  const bench = useBench();
  const { session, sender } = bench;
  const [at, setAt] = useState<string | null>(null);
  const keys = groups.flatMap(({ rows }) => rows.flatMap(withAllRows)).map(({ key }) => key);
  const stop = [at, chosen?.key].find((key) => key != null && keys.includes(key)) ?? keys[0];
  const choose = (row: ListRow) => {
    session.setState({ selection: row.selection, tool: 'select' });
    if (row.at !== null) centreOn(bench, row.at);
  };
  const press = (event: KeyboardEvent<HTMLElement>) => {
    if (!(event.target instanceof HTMLElement) || !('row' in event.target.dataset)) return;
    if (plainDeed(rowKeys, event.key) === 'erase') {
      event.preventDefault();
      event.target.click();
      return sender.send({ do: 'erase' });
    }
    const rows = [...event.currentTarget.querySelectorAll<HTMLElement>('[data-row]')];
    const shown = rows.filter((row) => row.offsetParent !== null);
    const next = nextRow(event.key, shown.indexOf(event.target), shown.length);
    if (next === null) return;
    event.preventDefault();
    shown[next]?.focus();
  };
  return (
    <div className="list-rows" onKeyDown={press}>
      <p className="note">
        {phrase`Arrow keys go from row to row, Enter selects, Delete erases. Escape closes the list.`}
      </p>
      {groups.map(({ key, title, rows }) => (
        <details key={key} className="more" open={key !== 'posts'}>
          <summary>
            <h3>
              {title}: {rows.length}
            </h3>
          </summary>
          <ul>
            {rows.map((row) => (
              <Row
                key={row.key}
                row={row}
                chosen={chosen}
                stop={stop}
                onRow={choose}
                onStop={setAt}
              />
            ))}
          </ul>
        </details>
      ))}
    </div>
  );
};
