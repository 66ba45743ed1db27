import { phrase } from '../../phrases/phrase.ts';
import { useSession } from '../bench.ts';
import { CallsKey } from './calls/CallsKey.tsx';
import { SquaringKey } from './squaring/SquaringKey.tsx';
import { SurveyKey } from './survey/SurveyKey.tsx';

/**
 * What the plan was measured by, in one place: its tapes, the numbers that square a corner, the lot by its
 * deed. What the next one's card shows already is left out, and so is what says nothing of the selected.
 */
export const Measuring = () => {
  const kind = useSession(({ selection }) => selection?.kind);
  const tool = useSession((state) => state.tool);
  const whole = kind === undefined;
  return (
    <section aria-label={phrase`Measuring`} className="measuring">
      {whole && <h3>{phrase`Measuring`}</h3>}
      {tool !== 'tape' && <SurveyKey />}
      {(whole || kind === 'mark') && <SquaringKey />}
      {whole && tool !== 'boundary' && <CallsKey />}
    </section>
  );
};
