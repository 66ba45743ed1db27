import './openings.css';
import { useEffect, useState } from 'react';
import { useBench, useLayout } from '../bench.ts';
import { BookKey } from '../book/BookKey.tsx';
import { Cautions } from '../Cautions.tsx';
import { today } from '../today.ts';
import { GateList } from './GateList.tsx';
import { OpeningCard } from './OpeningCard.tsx';
import { OrderKeys } from './OrderKeys.tsx';
import { showCard } from './showCard.ts';
import type { Signer } from './SignOff.tsx';
import { useStandings } from './useStandings.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The screen on which every opening is checked against what will hang in it, and signed off. */
export const Openings = () => {
  const { session } = useBench();
  const { gates } = useLayout();
  const standings = useStandings();
  const [signer, setSigner] = useState<Signer>(() => ({ by: '', on: today() }));
  // who comes from a gate in the yard wants to see that gate
  useEffect(() => {
    const { selection } = session.getState();
    if (selection?.kind === 'gate') showCard(selection.id);
  }, [session]);
  return (
    <div className="page">
      <p className="lead">
        {phrase`Inside face to inside face of the gate posts: what every leaf, hinge and latch takes up, and from where to where the opening still works.`}
      </p>
      {standings.length === 0 ? (
        <p>
          {phrase`There is no gate yet. Drop one on a fence, then check here that its leaves and hardware fit the opening, and sign it off.`}{' '}
          <a href="#yard">{phrase`Drop a gate in the Yard.`}</a>
        </p>
      ) : (
        <>
          <GateList standings={standings} />
          <OrderKeys />
        </>
      )}
      {standings.map((standing) => {
        const gate = gates[standing.id];
        return (
          gate !== undefined && (
            <OpeningCard
              key={standing.id}
              gate={gate}
              standing={standing}
              signer={signer}
              onSigner={setSigner}
            />
          )
        );
      })}
      <BookKey />
      <Cautions />
    </div>
  );
};
