import { useRef, useState, type KeyboardEvent } from 'react';
import type { Asked } from '../../editor/tool.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useBench, useSite } from '../bench.ts';
import { plainDeed } from '../help/keys/keyRow.ts';
import { entryKeys } from './entryKeys.ts';
import { Keypad } from './Keypad.tsx';
import type { Sign } from './TypedEntry.tsx';
import { useClearOf } from './useClearOf.ts';
import { useTypedFigure } from './useTypedFigure.ts';

interface Props {
  readonly asked: Asked;
  readonly begun: Sign | null;
}

const touches = (): boolean => window.matchMedia('(pointer: coarse)').matches;

/** The figure that the tool in hand asks for at a place that was tapped: one is offered, Enter sets it. */
export const FigureEntry = ({ asked, begun }: Props) => {
  const { send } = useBench().sender;
  const { lengths } = useSite();
  const [keypad, setKeypad] = useState(touches);
  const form = useRef<HTMLFormElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const { text, fault, type, set } = useTypedFigure(asked, begun, field);
  useClearOf(form, asked.at, keypad ? 'with keys' : 'without keys');
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    const deed = plainDeed(entryKeys, event.key);
    if (deed === 'set') set();
    if (deed === 'drop') send({ do: 'leave' });
  };
  return (
    <form
      ref={form}
      className="typed"
      aria-label={asked.words.form}
      onSubmit={(event) => event.preventDefault()}
    >
      <div className="typed-row">
        <label className="field">
          <span>{asked.words.field}</span>
          <input
            ref={field}
            value={text ?? formatLength(asked.offered, lengths)}
            inputMode={touches() ? 'none' : 'text'}
            autoComplete="off"
            aria-invalid={fault !== null}
            onChange={(event) => type(event.target.value)}
            onFocus={() => setKeypad(touches())}
            onKeyDown={press}
          />
        </label>
        <button type="button" className="chief" onClick={set}>
          {phraseOf('piece')`Set`}
        </button>
      </div>
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      {/* the first key begins a figure of its own and does not add to the one offered */}
      {keypad && <Keypad onKey={(change) => type(change(text ?? ''))} />}
      <div className="typed-row">
        <button type="button" onClick={() => send({ do: 'leave' })}>
          {asked.words.drop}
        </button>
        {keypad && (
          <button type="button" onClick={() => setKeypad(false)}>
            {phrase`Hide keys`}
          </button>
        )}
      </div>
    </form>
  );
};
