import { useState } from 'react';
import type { Edge } from '../../../editor/edges.ts';
import type { ListRow } from '../../../editor/list/listRow.ts';
import { toldPlace } from '../../../editor/list/toldPlace.ts';
import { direction } from '../../../editor/direction.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { splitLeg } from '../../../site/edits/splitLeg.ts';
import { splitSide } from '../../../site/edits/splitSide.ts';
import { joinMarks } from '../../../site/edits/joinMarks.ts';
import type { LineId, MarkId } from '../../../site/ids.ts';
import { nextId } from '../../../site/nextId.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import type { Selection } from '../../../store/selection.ts';
import { inches } from '../../../units/inches.ts';
import { parseLength } from '../../../units/parseLength.ts';
import { parseWay } from '../../../units/parseWay.ts';
import { useBench, useSite } from '../../bench.ts';
import { useEdit } from '../cards/useEdit.ts';
import { EdgeFields, MarkField, WayFields } from './PlaceFields.tsx';
import { usePlace } from './usePlace.ts';
import { WordsForm } from './WordsForm.tsx';

type Thing = NonNullable<Selection>;

/** Moves what is selected by so much: a gate along its leg, a mark with what stands on it. */
const MoveForm = () => {
  const { sender, session } = useBench();
  const { lengths } = useSite();
  const [text, setText] = useState({ far: '', way: '' });
  const move = () => {
    const far = parseLength(text.far, lengths.system);
    if (!far.ok) return phrase`How far: ${far.reason}`;
    const way = parseWay(text.way);
    if (!way.ok) return phrase`Direction: ${way.reason}`;
    const { x, y } = direction(way.value);
    session.setState({ tool: 'select' });
    sender.send({ do: 'nudge', x: inches(x * far.value), y: inches(y * far.value) });
    return null;
  };
  return (
    <WordsForm label={phrase`Move it`} action={phrase`Move it`} onDo={move}>
      <WayFields {...text} onSay={(change) => setText((was) => ({ ...was, ...change }))} />
    </WordsForm>
  );
};

const belongsTo =
  (thing: Thing) =>
  ({ of }: Edge): boolean => {
    if (of.kind === 'side') return thing.kind === 'feature' && of.feature === thing.id;
    if (thing.kind === 'leg') return of.line === thing.line && of.id === thing.id;
    return thing.kind === 'line' && of.line === thing.id;
  };

/** Puts a mark into a leg or a side, so far from one of its ends: the leg is then two. */
const SplitForm = ({ thing }: { readonly thing: Thing }) => {
  const site = useSite();
  const { session } = useBench();
  const edit = useEdit();
  const place = usePlace(belongsTo(thing));
  const split = () => {
    const told = place.read('edge');
    if (!told.ok) return told.reason;
    const at = toldPlace(site, told.value);
    if (!at.ok) return at.reason;
    if (told.value.by !== 'edge') return null;
    const { of } = told.value.edge;
    const mark = nextId(site, 'mark');
    const refused =
      of.kind === 'leg'
        ? edit(phrase`Add mark`, (was) => splitLeg(was, of.line, of.id, at.value))
        : edit(phrase`Add corner`, (was) => splitSide(was, of.feature, of.id, at.value));
    if (refused === null)
      session.setState({ tool: 'select', selection: { kind: 'mark', id: mark } });
    return refused;
  };
  return (
    <WordsForm label={phrase`Put a mark into it`} action={phrase`Put a mark there`} onDo={split}>
      <EdgeFields place={place} far={phrase`How far`} />
    </WordsForm>
  );
};

/** Makes one mark of two. */
const JoinForm = ({ id }: { readonly id: MarkId }) => {
  const { session } = useBench();
  const { marks } = useSite();
  const edit = useEdit();
  const [chosen, setChosen] = useState<MarkId | null>(null);
  const others = (Object.keys(marks) as MarkId[]).filter((one) => one !== id);
  const into = chosen !== null && others.includes(chosen) ? chosen : others[0];
  if (into === undefined) return null;
  const join = () => {
    const refused = edit(phrase`Join marks`, (was) => joinMarks(was, id, into));
    if (refused === null) session.setState({ selection: { kind: 'mark', id: into } });
    return refused;
  };
  return (
    <WordsForm
      label={phrase`Join it to another mark`}
      action={phrase`Join it to that mark`}
      onDo={join}
    >
      <MarkField label={phrase`Join to`} mark={into} except={id} onMark={setChosen} />
    </WordsForm>
  );
};

/** Draws a line on from one of its ends. */
const DrawOnKeys = ({ id }: { readonly id: LineId }) => {
  const { sender, session } = useBench();
  const { lines, marks } = useSite();
  const line = lines[id];
  if (line === undefined || line.closed) return null;
  const stops = verticesOf(line.path);
  const drawOn = (mark: MarkId | undefined) => {
    const at = mark === undefined ? undefined : marks[mark];
    if (at === undefined) return;
    session.setState({ tool: 'fence' });
    const touch = { at: { x: at.x, y: at.y }, reach: inches(0.5), free: false };
    sender.send({ do: 'move', ...touch });
    sender.send({ do: 'press', ...touch });
    sender.send({ do: 'release', ...touch });
  };
  return (
    <div className="choices">
      <button type="button" onClick={() => drawOn(stops.at(-1)?.mark)}>
        {phrase`Add a leg at its end`}
      </button>
      <button type="button" onClick={() => drawOn(stops[0]?.mark)}>
        {phrase`Add a leg at its start`}
      </button>
    </div>
  );
};

interface Props {
  readonly row: ListRow;
  readonly onCard: () => void;
}

/** What can be done with the selected thing, and the way to its card with all its values. */
export const Chosen = ({ row, onCard }: Props) => {
  const { sender, session } = useBench();
  const { selection: thing } = row;
  const erase = () => {
    session.setState({ tool: 'select' });
    sender.send({ do: 'erase' });
  };
  const split = thing.kind === 'leg' || thing.kind === 'line' || thing.kind === 'feature';
  return (
    <section className="stack" aria-label={phrase`Selected`}>
      <h3>{phrase`Selected`}</h3>
      <p>{row.words}</p>
      <div className="choices">
        <button type="button" className="chief" onClick={onCard}>
          {phrase`Go to its card`}
        </button>
        <button type="button" onClick={erase}>
          {phrase`Erase it`}
        </button>
      </div>
      {thing.kind === 'line' && <DrawOnKeys id={thing.id} />}
      {thing.kind !== 'tape' && (
        <details className="more">
          <summary>{phrase`Move it`}</summary>
          <MoveForm key={row.key} />
        </details>
      )}
      {split && (
        <details className="more">
          <summary>{phrase`Put a mark into it`}</summary>
          <SplitForm key={row.key} thing={thing} />
        </details>
      )}
      {thing.kind === 'mark' && (
        <details className="more">
          <summary>{phrase`Join it to another mark`}</summary>
          <JoinForm key={row.key} id={thing.id} />
        </details>
      )}
    </section>
  );
};
