import { useEffect, useId, useRef, type ReactNode } from 'react';
import { phrase } from '../../phrases/phrase.ts';

interface Props {
  readonly title: string;
  /** What the key says that puts it away; Done unless told. */
  readonly close?: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A sheet laid over the screen until it is put away. */
export const SheetOver = ({ title, close = phrase`Done`, onClose, children }: Props) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const element = dialog.current;
    if (element === null) return undefined;
    element.showModal();
    return () => element.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className="over"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div className="over-head">
        <h2 id={id}>{title}</h2>
        <button type="button" onClick={onClose}>
          {close}
        </button>
      </div>
      {children}
    </dialog>
  );
};
