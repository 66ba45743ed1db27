import { useEffect, useRef, useState, type RefObject } from 'react';
import { useLatest } from '../../canvas/useLatest.ts';
import type { Asked } from '../../editor/tool.ts';
import { useBench, useSite } from '../bench.ts';
import { readHeight } from './cards/readHeight.ts';
import type { Sign } from './TypedEntry.tsx';

/** What is typed for a height that is asked, and what one can do with it. */
export interface TypedHeight {
  /** Null while the height that is offered stands. */
  readonly text: string | null;
  readonly fault: string | null;
  readonly type: (text: string) => void;
  /** Sets the shot at what is typed, else at what is offered. */
  readonly set: () => void;
}

/** Holds what is typed for the height of a grade shot, keeps its field in hand, and hands it to the tool. */
export const useTypedHeight = (
  { at }: Asked,
  begun: Sign | null,
  field: RefObject<HTMLInputElement | null>,
): TypedHeight => {
  const { send } = useBench().sender;
  const { lengths } = useSite();
  const [text, setText] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const type = (next: string) => {
    setText(next);
    setFault(null);
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
    const height = text === null ? null : readHeight(text, lengths.system);
    if (height !== null && !height.ok) return setFault(`Height: ${height.reason}`);
    if (height !== null) send({ do: 'type', length: height.value, bearing: null });
    send({ do: 'finish' });
  };
  return { text, fault, type, set };
};
