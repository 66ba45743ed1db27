import { useEffect, useState, type ComponentType } from 'react';
import { phrase } from '../phrases/phrase.ts';

/** A part of the program that is fetched when it is needed, or before. */
export interface Later {
  /** Shows it once it is here; one line, and a key to try again, where it cannot be had. */
  readonly Part: ComponentType;
  /** Fetches it; rejects where it cannot be had. */
  readonly fetch: () => Promise<void>;
}

interface Stand {
  readonly tried: number;
  readonly is: 'on its way' | 'here' | 'stuck';
}

const Stuck = ({ onAgain }: { readonly onAgain: () => void }) => (
  <section className="page" role="alert">
    <p>{phrase`This part of the program cannot be fetched now; nothing of the drawing is lost.`}</p>
    <div className="choices">
      <button type="button" onClick={onAgain}>{phrase`Try again`}</button>
    </div>
  </section>
);

/** A part of the program that comes later. */
export const later = (load: () => Promise<ComponentType>): Later => {
  let here: ComponentType | null = null;
  let running: Promise<void> | null = null;
  const fetch = (): Promise<void> =>
    (running ??= load().then(
      (part) => {
        here = part;
      },
      (error: unknown) => {
        running = null;
        throw error;
      },
    ));
  const Part = () => {
    const [{ tried, is }, setStand] = useState<Stand>({ tried: 0, is: 'on its way' });
    useEffect(() => {
      let looked = true;
      const tell = (now: Stand['is']) => () => {
        if (looked) setStand({ tried, is: now });
      };
      if (here === null) fetch().then(tell('here'), tell('stuck'));
      return () => {
        looked = false;
      };
    }, [tried]);
    const Here = here;
    if (Here !== null) return <Here />;
    if (is === 'stuck') {
      return <Stuck onAgain={() => setStand({ tried: tried + 1, is: 'on its way' })} />;
    }
    return <p className="page" role="status">{phrase`This screen is on its way …`}</p>;
  };
  return { Part, fetch };
};
