import { radius95 } from '../../../engine/walk/radius95.ts';
import { roughText } from '../../../engine/walk/roughText.ts';
import { distance } from '../../../geometry/distance.ts';
import { sameSpot } from '../../../geometry/sameSpot.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Observation, ObservationOf } from '../../../site/observation.ts';
import { inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';

/** How rough a mark is that satellites found, by the best of what they found; nothing for any other mark. */
export const RoughFix = ({ id }: { readonly id: MarkId }) => {
  const { marks, observations, lengths } = useSite();
  const mark = marks[id];
  const [best] = Object.values<Observation>(observations)
    .flatMap((seen): ObservationOf<'fix'>[] =>
      seen.kind === 'fix' && seen.mark === id ? [seen] : [],
    )
    .toSorted((a, b) => a.accuracy - b.accuracy);
  if (best === undefined || mark === undefined) return null;
  const within = phrase`±${roughText(radius95(best.accuracy), lengths)} 19 times in 20`;
  if (sameSpot(mark, best)) {
    return (
      <p className="note">
        {phrase`Rough, by GPS, ${within}. It holds nothing in its place: tape it.`}
      </p>
    );
  }
  const away = roughText(inches(distance(mark, best)), lengths);
  return <p className="note">{phrase`GPS had it ${away} from here, ${within}.`}</p>;
};
