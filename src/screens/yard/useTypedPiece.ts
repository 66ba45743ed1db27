import { useState } from 'react';
import type { Piece } from '../../editor/tool.ts';
import { inches } from '../../units/inches.ts';
import { useBench, useSite } from '../bench.ts';
import { nothingTyped, pressPoint, readTexts, type TypedText } from './typedPiece.ts';

/** What is typed for a piece, and the two things that one can do with it. */
export interface TypedPiece {
  readonly text: TypedText;
  readonly fault: string | null;
  /** Shows the piece as it would be. */
  readonly type: (change: Partial<TypedText>) => void;
  /** Draws it. */
  readonly set: (change?: Partial<TypedText>) => void;
}

/** The reach of a press that is typed: it stands on what lies right there, and no farther. */
const exactly = inches(0.5);

/** Holds what is typed for the piece being drawn and hands it to the tool. */
export const useTypedPiece = (piece: Piece): TypedPiece => {
  const { sender, pointer } = useBench();
  const { lengths } = useSite();
  const [text, setText] = useState<TypedText>(nothingTyped);
  const [fault, setFault] = useState<string | null>(null);
  const type = (change: Partial<TypedText>) => {
    const next = { ...text, ...change };
    setText(next);
    setFault(null);
    const typed = readTexts(next, lengths);
    if (typed.ok) sender.send({ do: 'type', ...typed.value });
  };
  const set = (change: Partial<TypedText> = {}) => {
    const typed = readTexts({ ...text, ...change }, lengths);
    if (!typed.ok) return setFault(typed.reason);
    const at = pressPoint(piece, typed.value, pointer.getState());
    if (!at.ok) return setFault(at.reason);
    const touch = { at: at.value, reach: exactly, free: false };
    sender.send({ do: 'type', ...typed.value });
    sender.send({ do: 'press', ...touch });
    sender.send({ do: 'release', ...touch });
    pointer.setState(null, true);
    setText(nothingTyped);
    setFault(null);
  };
  return { text, fault, type, set };
};
