import { suspectText } from '../../../engine/survey/suspectText.ts';
import type { Suspect } from '../../../engine/survey/survey.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { marksObserved } from '../../../site/marksObserved.ts';
import { midpointOf } from './midpointOf.ts';
import { useBench, useLayout, useSite } from '../../bench.ts';
import { centreOn } from '../../centreOn.ts';

/** The readings that are most likely wrong, each with a key that shows where it was taken. */
export const Suspects = ({ onShow }: { readonly onShow: () => void }) => {
  const bench = useBench();
  const site = useSite();
  const { posts, survey } = useLayout();
  const show = ({ ids: [id] }: Suspect) => {
    const seen = id === undefined ? undefined : site.observations[id];
    if (seen === undefined) return;
    const marks = Object.values(marksObserved(seen));
    const [first] = marks;
    const at = midpointOf(site, marks);
    if (first !== undefined) {
      bench.session.setState({ selection: { kind: 'mark', id: first }, tool: 'select' });
    }
    if (at !== null) centreOn(bench, at);
    onShow();
  };
  if (survey.suspects.length === 0) return null;
  return (
    <ul className="plain survey-suspects">
      {survey.suspects.map((suspect) => (
        <li key={suspect.ids.join()}>
          <p className="fault">{suspectText(site, posts, suspect)}</p>
          <button type="button" onClick={() => show(suspect)}>
            {phrase`Show it`}
          </button>
        </li>
      ))}
    </ul>
  );
};
