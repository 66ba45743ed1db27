import { useLayout } from '../bench.ts';
import { Cautions } from '../Cautions.tsx';
import { OpeningCard } from './OpeningCard.tsx';

/** The screen on which every opening is checked against what will hang in it. */
export const Openings = () => {
  const gates = Object.values(useLayout().gates);
  return (
    <div className="page">
      <p className="lead">
        Inside face to inside face of the gate posts: what every leaf, hinge and latch takes up, and
        from where to where the opening still works.
      </p>
      {gates.length === 0 && (
        <p>
          There is no gate yet. <a href="#yard">Drop one on a fence in the Yard.</a>
        </p>
      )}
      {gates.map((gate) => (
        <OpeningCard key={gate.id} gate={gate} />
      ))}
      <Cautions />
    </div>
  );
};
