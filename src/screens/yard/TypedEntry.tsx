import { useEffect, useRef, useState, type KeyboardEvent, type RefObject } from 'react';
import type { Piece } from '../../editor/tool.ts';
import { useLatest } from '../../canvas/useLatest.ts';
import { englishOf, phrase, phraseOf } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { plainDeed } from '../help/keys/keyRow.ts';
import { entryKeys } from './entryKeys.ts';
import { Keypad } from './Keypad.tsx';
import { nothingTyped, waysOf } from './typedPiece.ts';
import { useClearOf } from './useClearOf.ts';
import { useTypedPiece, type TypedPiece } from './useTypedPiece.ts';

const touches = (): boolean => window.matchMedia('(pointer: coarse)').matches;

interface FieldsProps {
  readonly typed: TypedPiece;
  readonly length: RefObject<HTMLInputElement | null>;
  readonly onLength: () => void;
}

const Fields = ({ typed, length, onLength }: FieldsProps) => {
  const { text, fault, type, set } = typed;
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    const deed = plainDeed(entryKeys, event.key);
    if (deed === 'set') {
      set();
      // the next piece begins with its length
      length.current?.focus();
    }
    if (deed !== 'drop') return;
    type(nothingTyped);
    event.currentTarget.blur();
  };
  const wrongWay = englishOf(fault ?? '').startsWith('Direction');
  const shared = { autoComplete: 'off', onKeyDown: press };
  return (
    <div className="typed-row">
      <label className="field">
        <span>{phrase`Length`}</span>
        <input
          {...shared}
          aria-invalid={fault !== null && !wrongWay}
          ref={length}
          value={text.length}
          inputMode={touches() ? 'none' : 'text'}
          onChange={(event) => type({ length: event.target.value })}
          onFocus={onLength}
        />
      </label>
      <label className="field">
        <span>{phrase`Direction (°)`}</span>
        <input
          {...shared}
          aria-invalid={wrongWay}
          value={text.azimuth}
          inputMode="decimal"
          placeholder={phrase`pointer`}
          onChange={(event) => type({ azimuth: event.target.value })}
        />
      </label>
      <button type="button" className="chief" onClick={() => set()}>
        {phraseOf('piece')`Set`}
      </button>
    </div>
  );
};

const Ways = ({ piece, typed }: { readonly piece: Piece; readonly typed: TypedPiece }) => (
  <div className="typed-row ways" role="group" aria-label={phrase`Direction`}>
    {waysOf(piece).map(({ label, name, azimuth }) => (
      <button
        key={name}
        type="button"
        aria-label={name}
        onClick={() =>
          typed.text.length.trim() === '' ? typed.type({ azimuth }) : typed.set({ azimuth })
        }
      >
        {label}
      </button>
    ))}
  </div>
);

/** A sign typed on the pad, to begin a length with; a new object for each. */
export interface Sign {
  readonly sign: string;
}

interface Props {
  readonly piece: Piece;
  readonly begun: Sign | null;
}

/** Length and direction of the piece being drawn, typed; Enter sets it. */
export const TypedEntry = ({ piece, begun }: Props) => {
  const { send } = useBench().sender;
  const typed = useTypedPiece(piece);
  const length = useRef<HTMLInputElement>(null);
  const form = useRef<HTMLFormElement>(null);
  const [keypad, setKeypad] = useState(false);
  useClearOf(form, piece.from, keypad ? 'with keys' : 'without keys');
  const taken = useRef(begun);
  const latest = useLatest(typed);
  useEffect(() => {
    if (begun === null || begun === taken.current) return;
    taken.current = begun;
    length.current?.focus();
    latest.current.type({ length: latest.current.text.length + begun.sign });
  }, [begun, latest]);
  return (
    <form
      ref={form}
      className="typed"
      data-point="length"
      aria-label={phrase`Length and direction of this piece`}
      onSubmit={(event) => event.preventDefault()}
    >
      <Fields typed={typed} length={length} onLength={() => setKeypad(touches())} />
      <Ways piece={piece} typed={typed} />
      {typed.fault !== null && (
        <p className="fault" role="alert">
          {typed.fault}
        </p>
      )}
      {keypad && <Keypad onKey={(change) => typed.type({ length: change(typed.text.length) })} />}
      <div className="typed-row">
        <button type="button" data-point="finish" onClick={() => send({ do: 'finish' })}>
          {phrase`Finish`}
        </button>
        <button type="button" onClick={() => send({ do: 'close' })}>
          {phrase`Close to start`}
        </button>
        <button type="button" onClick={() => send({ do: 'back' })}>
          {phrase`Take back`}
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
