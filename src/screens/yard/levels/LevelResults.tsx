import type { LevelBook } from '../../../engine/ground/levelBook.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { takeHeights } from '../../../site/edits/takeHeights.ts';
import type { Site } from '../../../site/site.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { useBench, useSite } from '../../bench.ts';
import { useDo } from '../cards/useEdit.ts';
import { closingText } from './closingText.ts';

interface Props {
  readonly book: LevelBook;
  readonly style: LengthStyle;
  readonly onClose: () => void;
}

/** The names of the grade shots of a site. */
const shotNames = ({ shots }: Site): ReadonlySet<string> =>
  new Set(Object.values(shots).map(({ label }) => label.trim()));

/** What level notes come to: the check of the sums, how they closed, and their heights for the shots. */
export const LevelResults = ({ book, style, onClose }: Props) => {
  const site = useSite();
  const { session, sender } = useBench();
  const make = useDo();
  const names = shotNames(site);
  const named = book.points.filter(({ point }) => point.trim() !== '');
  const [known, unplaced] = [true, false].map((on) =>
    named.filter(({ point }) => names.has(point.trim()) === on),
  );
  const write = (length: LevelBook['rise']) => formatLength(length, style);
  const put = (name: string, height: LevelBook['rise']) => {
    session.setState({ tool: 'shot', selection: null });
    sender.send({ do: 'offer', height, name: name.trim() });
    onClose();
  };
  return (
    <section aria-label={phrase`What the level notes come to`} className="stack">
      <p>
        {phrase`Sum of BS ${write(book.backsights)} less sum of FS ${write(book.foresights)} is the rise of the run, ${write(book.rise)}.`}
      </p>
      <p>
        <b>{closingText(book.closing, style)}</b>
      </p>
      <div className="choices">
        <button
          type="button"
          className="chief"
          disabled={(known ?? []).length === 0}
          onClick={() => make(phrase`Heights from level notes`, (was) => takeHeights(was, named))}
        >
          {phrase`Give the grade shots these heights`}
        </button>
      </div>
      {(known ?? []).length === 0 && (
        <p className="note">
          {phrase`No grade shot has the name of a point yet: put points on the pad where they were read.`}
        </p>
      )}
      {(unplaced ?? []).length > 0 && (
        <div className="choices" role="group" aria-label={phrase`Points that are not on the pad`}>
          {(unplaced ?? []).map(({ point, height }, n) => (
            <button key={`${point} ${n}`} type="button" onClick={() => put(point, height)}>
              {phrase`Put ${point} on the pad`}
            </button>
          ))}
        </div>
      )}
    </section>
  );
};
