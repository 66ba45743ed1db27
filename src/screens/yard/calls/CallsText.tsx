import { useId } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import { useBench, useSession } from '../../bench.ts';
import { exampleDeed } from './exampleDeed.ts';

const WhatToPaste = ({ onExample }: { readonly onExample: () => void }) => (
  <section aria-label={phrase`What can be pasted`} className="stack">
    <p className="note">
      {phrase`Paste a deed description whole: it is read from one “thence” to the next, and every line that is not understood is shown. Or type a line for each side of the lot:`}
    </p>
    <pre className="call-lines">
      {`N 4°10' E 150.00\nS 85-50-00 E 100 feet to a stake\ndue south 2 chains 25 links\naz 274°10' 30.48 m\ncurve right, radius 40, arc 62.83`}
    </pre>
    <div className="choices">
      <button type="button" onClick={onExample}>
        {phrase`Put in an example`}
      </button>
    </div>
  </section>
);

/** The text of the calls; it is read while it is typed. */
export const CallsText = () => {
  const id = useId();
  const { session } = useBench();
  const { text } = useSession(({ calls }) => calls);
  const set = (to: string) => session.setState(({ calls }) => ({ calls: { ...calls, text: to } }));
  return (
    <>
      <div className="field">
        <label htmlFor={id}>{phrase`Calls, a line for each, or a deed description`}</label>
        <textarea
          id={id}
          rows={8}
          value={text}
          spellCheck={false}
          autoComplete="off"
          autoCapitalize="off"
          onChange={(event) => set(event.target.value)}
        />
      </div>
      {text.trim() === '' ? (
        <WhatToPaste onExample={() => set(exampleDeed)} />
      ) : (
        <div className="choices">
          <button type="button" onClick={() => set('')}>
            {phrase`Clear the calls`}
          </button>
        </div>
      )}
    </>
  );
};
