import { phrase } from '../../phrases/phrase.ts';
import { useEffect, useRef, useState, type RefObject } from 'react';
import { useLatest } from '../../canvas/useLatest.ts';
import type { Asked } from '../../editor/tool.ts';
import { useBench, useSite } from '../bench.ts';
import { readHeight } from './cards/readHeight.ts';
import { readReading } from './readReading.ts';
import type { Sign } from './TypedEntry.tsx';

/** What is typed for a figure that is asked, and what one can do with it. */
export interface TypedFigure {
  /** Null while the figure that is offered stands. */
  readonly text: string | null;
  readonly fault: string | null;
  readonly type: (text: string) => void;
  /** Takes what is typed, else what is offered. */
  readonly set: () => void;
}

/** Holds what is typed for a figure, keeps its field in hand, and hands it to the tool as it is typed. */
export const useTypedFigure = (
  { at, what, words }: Asked,
  begun: Sign | null,
  field: RefObject<HTMLInputElement | null>,
): TypedFigure => {
  const { send } = useBench().sender;
  const { lengths } = useSite();
  const [text, setText] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const readIt = (typed: string) =>
    what === 'height' ? readHeight(typed, lengths.system) : readReading(typed, lengths);
  const type = (next: string) => {
    setText(next);
    setFault(null);
    if (what === 'height') return;
    // the yard is shown as it would stand
    const figure = readIt(next);
    if (figure.ok) send({ do: 'type', length: figure.value, bearing: null });
  };
  const askedAt = useRef<Asked['at'] | null>(null);
  useEffect(() => {
    if (askedAt.current === at) return;
    askedAt.current = at;
    // the pad took the focus with the press
    field.current?.focus({ preventScroll: true });
    field.current?.select();
  }, [at, field]);
  const taken = useRef(begun);
  const latest = useLatest({ text, type });
  useEffect(() => {
    if (begun === null || begun === taken.current) return;
    taken.current = begun;
    field.current?.focus();
    latest.current.type(`${latest.current.text ?? ''}${begun.sign}`);
  }, [begun, latest, field]);
  const set = () => {
    const figure = text === null ? null : readIt(text);
    if (figure !== null && !figure.ok) {
      return setFault(
        phrase`${what === 'height' ? phrase`Height` : words.field}: ${figure.reason}`,
      );
    }
    if (figure !== null) send({ do: 'type', length: figure.value, bearing: null });
    send({ do: 'finish' });
  };
  return { text, fault, type, set };
};
