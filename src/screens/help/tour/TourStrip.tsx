import './tour.css';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';
import { tourSteps, type Tour } from '../../../store/tour.ts';
import { useBench, useSession } from '../../bench.ts';
import { showHelpKey } from '../showHelpKey.ts';
import { tourHeadId } from './beginTour.ts';
import { pointsAt } from './pointsAt.ts';
import { endWords, stepWords } from './stepWords.ts';
import { after, before, begun } from './tourMoves.ts';
import { usePointed } from './usePointed.ts';
import { useTourGoesOn, useTourNow } from './useTour.ts';

const { length: count } = tourSteps;

const placeText = ({ at }: Tour): string =>
  at === 'end' ? phrase`The tour is over` : phrase`Step ${tourSteps.indexOf(at) + 1} of ${count}`;

/** The step of the tour that one is at, in a row of its own: it covers no key and no drawing. */
const Steps = ({ tour }: { readonly tour: Tour }) => {
  const { session } = useBench();
  const now = useTourNow();
  useTourGoesOn(tour, now);
  usePointed(tour.at === 'end' ? [] : pointsAt(tour.at, now));
  const { deed, more } = tour.at === 'end' ? endWords : stepWords[tour.at];
  const go = (next: Tour | null) => session.setState({ tour: next });
  const leave = () => {
    go(null);
    showHelpKey();
  };
  return (
    <section className="tour" aria-label={phrase`Tour`}>
      <div className="tour-words" role="status" aria-live="polite">
        <p id={tourHeadId} className="tour-place" tabIndex={-1}>
          {placeText(tour)}
        </p>
        <p className="tour-deed">{deed}</p>
        <p className="tour-more">{more}</p>
      </div>
      <div className="tour-keys">
        {tour.at === 'end' ? (
          <button type="button" onClick={() => go(begun(now.seen))}>
            {phrase`Take it again`}
          </button>
        ) : (
          <>
            <button
              type="button"
              disabled={tour.at === tourSteps[0]}
              onClick={() => go(before(tour, now.seen))}
            >
              {phraseOf('tour')`Back`}
            </button>
            <button type="button" onClick={() => go(after(tour, now.seen))}>
              {phraseOf('tour')`Skip`}
            </button>
          </>
        )}
        <button type="button" onClick={leave}>
          {tour.at === 'end' ? phraseOf('tour')`Done` : phraseOf('tour')`Leave`}
        </button>
      </div>
    </section>
  );
};

/** The tour, while it is taken. */
export const TourStrip = () => {
  const tour = useSession((state) => state.tour);
  return tour === null ? null : <Steps tour={tour} />;
};
