import { standingText } from '../../drawing/orders/standingText.ts';
import type { GateId } from '../../site/ids.ts';
import { useSite } from '../bench.ts';
import { useStandings } from './useStandings.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How the sign-off of a gate stands, in one line, with the way to where it is signed. */
export const StandingLine = ({ gate }: { readonly gate: GateId }) => {
  const { lengths } = useSite();
  const found = useStandings().find(({ id }) => id === gate);
  if (found === undefined) return null;
  return (
    <p className={`standing ${found.standing.kind}`}>
      {standingText(found, lengths)}{' '}
      <a className="reached" href="#openings">
        {phrase`Check it in Openings`}
      </a>
    </p>
  );
};
