import { markName } from '../../../engine/survey/markName.ts';
import { tieFault } from '../../../engine/survey/tieFault.ts';
import { tied } from '../../../geometry/tied.ts';
import { mirrorMark } from '../../../site/edits/mirrorMark.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Observation } from '../../../site/observation.ts';
import type { Inches } from '../../../units/inches.ts';
import { useLayout, useSite } from '../../bench.ts';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly id: MarkId;
  /** All that was observed of it. */
  readonly seen: readonly Observation[];
}

/** A mark from which another is taped, and what the tape reads. */
interface Hook {
  readonly mark: MarkId;
  readonly reads: Inches;
}

/** The two hooks from which alone a mark is taped; null where it is held otherwise. */
const hooksOf = ({ id, seen }: Props): readonly [Hook, Hook] | null => {
  const hooks = seen.flatMap((tape): Hook[] =>
    tape.kind === 'tape'
      ? [{ mark: tape.from === id ? tape.to : tape.from, reads: tape.length }]
      : [],
  );
  const [one, two] = hooks;
  const only = seen.length === 2 && one !== undefined && two !== undefined;
  return only && one.mark !== two.mark ? [one, two] : null;
};

/** A tie of two tapes meets on either side of the line between its hooks: the other one, by a key. */
export const TieKeys = (props: Props) => {
  const site = useSite();
  const { posts } = useLayout();
  const make = useDo();
  const hooks = hooksOf(props);
  const [start, end] = hooks === null ? [] : hooks.map(({ mark }) => site.marks[mark]);
  if (hooks === null || start === undefined || end === undefined) return null;
  const [one, two] = hooks;
  const met = tied<'site'>({ start, end }, { start: one.reads, end: two.reads, side: 'left' });
  const fault = tieFault(met, site.lengths);
  if (fault !== null) return <p className="fault">{fault}</p>;
  return (
    <button
      type="button"
      onClick={() =>
        make(phrase`Other side`, (was) => mirrorMark(was, props.id, [one.mark, two.mark]))
      }
    >
      {phrase`Other side of ${markName(site, posts, one.mark)} to ${markName(site, posts, two.mark)}`}
    </button>
  );
};
