import { setInside } from '../../../site/edits/setInside.ts';
import type { LineId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** The boundary that a line follows, and how far inside it; nothing for a line that follows none. */
export const FollowsFields = ({ id }: { readonly id: LineId }) => {
  const site = useSite();
  const edit = useEdit();
  const make = useDo();
  const follows = site.lines[id]?.follows ?? null;
  if (follows === null) return null;
  const name = site.features[follows.feature]?.label || phrase`the boundary`;
  return (
    <div className="pair">
      <LengthField
        label={phrase`Inside ${name} by`}
        value={follows.inside}
        style={site.lengths}
        bare={smallUnit(site.lengths.system)}
        onEnter={(inside) => edit(phrase`Move along boundary`, (was) => setInside(was, id, inside))}
      />
      <button
        type="button"
        onClick={() => make(phrase`Let line stand by itself`, (was) => setInside(was, id, null))}
      >
        {phrase`Follow it no more`}
      </button>
    </div>
  );
};
