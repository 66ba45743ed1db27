import { phrase } from '../../../phrases/phrase.ts';
import './underlay.css';
import type { UnderlayId } from '../../../site/ids.ts';
import type { Underlay } from '../../../site/underlay.ts';
import { underlaysInOrder } from '../../../site/underlaysInOrder.ts';
import { useBench, useSession, useSite } from '../../bench.ts';
import { BringPicture } from './BringPicture.tsx';

const nameOf = ({ label, file }: Underlay): string => (label === '' ? file : label);

/** The pictures under the drawing, the uppermost first, and the key that brings one more. */
export const NextPictures = () => {
  const { session } = useBench();
  const selection = useSession((state) => state.selection);
  const all = underlaysInOrder(useSite()).toReversed();
  const select = (id: UnderlayId) => session.setState({ selection: { kind: 'underlay', id } });
  return (
    <section aria-label={phrase`Pictures under the drawing`}>
      <h3>{phrase`Pictures under the drawing`}</h3>
      {all.length === 0 && (
        <p className="note">
          {phrase`A photo, a scan of a plat or a page of a PDF to draw over. It is not printed on the crew sheet.`}
        </p>
      )}
      {all.length > 0 && (
        <ul className="plain">
          {all.map(([id, underlay]) => (
            <li key={id}>
              <button
                type="button"
                aria-pressed={selection?.kind === 'underlay' && selection.id === id}
                onClick={() => select(id)}
              >
                {underlay.locked ? phrase`${nameOf(underlay)} (locked)` : nameOf(underlay)}
              </button>
            </li>
          ))}
        </ul>
      )}
      <BringPicture label={phrase`Bring in a picture or PDF`} />
    </section>
  );
};
