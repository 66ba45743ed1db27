import { toldPlace } from '../../../editor/list/toldPlace.ts';
import { toldGate } from '../../../editor/plannedGate.ts';
import { toolbox } from '../../../editor/toolbox.ts';
import { unmeasured } from '../../../editor/unmeasured.ts';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';
import type { ToolId } from '../../../store/toolId.ts';
import { current } from '../../../store/history.ts';
import { inches } from '../../../units/inches.ts';
import { useBench, useSession } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { useStored } from '../../useStored.ts';
import { EdgeFields, PlaceFields } from './PlaceFields.tsx';
import { usePlace } from './usePlace.ts';
import { WordsForm } from './WordsForm.tsx';

/** Tools that set nothing on the ground. */
const idle: readonly ToolId[] = ['select', 'pan'];

const tools = toolbox.filter(({ id }) => !idle.includes(id));

/** A place that is told is pressed there and nowhere else: it stands on what lies right there. */
const exactly = inches(0.5);

const PlaceForm = () => {
  const bench = useBench();
  const { sender, pointer, site } = bench;
  const { prompt, piece } = useStored(sender.hand, (state) => state);
  const place = usePlace(() => true);
  const put = () => {
    const told = place.read();
    if (!told.ok) return told.reason;
    const at = toldPlace(current(site.getState().history), told.value);
    if (!at.ok) return at.reason;
    const touch = { at: at.value, reach: exactly, free: false };
    // what was typed for the piece before belongs to no place that is told
    if (piece !== null) sender.send({ do: 'type', length: null, bearing: null });
    sender.send({ do: 'move', ...touch });
    sender.send({ do: 'press', ...touch });
    sender.send({ do: 'release', ...touch });
    pointer.setState(null, true);
    return null;
  };
  return (
    <>
      <p className="note" role="status">
        {prompt.replaceAll(phraseOf('prompt')`Tap`, phraseOf('prompt')`Say`)}
      </p>
      <WordsForm
        label={phrase`Place`}
        action={piece === null ? phrase`Put it there` : phrase`Draw to there`}
        onDo={put}
      >
        <PlaceFields place={place} />
      </WordsForm>
    </>
  );
};

const noLeg = phrase`Leg: expected one of a fence line`;

const GateForm = () => {
  const bench = useBench();
  const { session } = bench;
  const place = usePlace(({ of }) => of.kind === 'leg');
  const put = () => {
    const told = place.read('edge');
    if (!told.ok) return told.reason;
    const was = bench.site.getState().history.present.site;
    const at = toldPlace(was, told.value);
    if (!at.ok) return at.reason;
    if (told.value.by !== 'edge' || told.value.edge.of.kind !== 'leg') return noLeg;
    const { anchor } = told.value;
    const { plans } = session.getState();
    const { line, id: leg } = told.value.edge.of;
    const planned = toldGate(was, plans.gate, { line, leg }, anchor);
    if (planned === null) return noLeg;
    bench.site.getState().commit(planned.site, phrase`Place gate`);
    session.setState({
      selection: { kind: 'gate', id: planned.id },
      plans: { ...plans, gate: unmeasured(plans.gate) },
    });
    return null;
  };
  if (place.edges.length === 0) {
    return <p className="note">{phrase`A gate goes into a leg of fence: draw fence first.`}</p>;
  }
  return (
    <WordsForm label={phrase`Place of the gate`} action={phrase`Put the gate there`} onDo={put}>
      <EdgeFields place={place} far={phrase`To the near post’s centre`} />
      <p className="note">{phrase`What the gate is made of is on the card: the next gate.`}</p>
    </WordsForm>
  );
};

/** Draws whatever the pad draws: what, where it begins, and then each piece by its length and direction. */
export const DrawByWords = () => {
  const { session } = useBench();
  const tool = useSession((state) => state.tool);
  const drawing = !idle.includes(tool);
  return (
    <section className="stack" aria-label={phrase`Draw by typing`}>
      <h3>{phrase`Draw by typing`}</h3>
      <ChoiceField
        label={phrase`What to draw`}
        value={drawing ? tool : 'select'}
        choices={[
          { value: 'select', label: phrase`Nothing: select and change` },
          ...tools.map(({ id, label }) => ({ value: id, label })),
        ]}
        onChoose={(id) => session.setState({ tool: id })}
      />
      {tool === 'gate' && <GateForm />}
      {drawing && tool !== 'gate' && <PlaceForm />}
    </section>
  );
};
