import { Cautions } from '../Cautions.tsx';

/** The screen of the dimensioned drawing set. */
export const CrewSheet = () => (
  <div className="page">
    <Cautions />
  </div>
);
