import { distance } from '../../../geometry/distance.ts';
import { setTape } from '../../../site/edits/setTape.ts';
import { inches } from '../../../units/inches.ts';
import { useLayout, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { useEdit } from '../cards/useEdit.ts';
import { helpsText } from '../../../engine/survey/standsText.ts';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';

/** The one tape that would help most, with a field for what it reads. */
export const NextTape = () => {
  const site = useSite();
  const layout = useLayout();
  const edit = useEdit();
  const { helps } = layout.survey;
  const text = helpsText(site, layout);
  if (helps === null || text === null) return null;
  const [from, to] = [site.marks[helps.from], site.marks[helps.to]];
  if (from === undefined || to === undefined) return null;
  return (
    <LengthField
      key={`${helps.from} ${helps.to}`}
      label={phrase`Tape this next: ${text}`}
      value={inches(distance(from, to))}
      style={site.lengths}
      note={phrase`The figure is what the drawing has: type what the tape reads.`}
      onEnter={(length) =>
        edit(phraseOf('edit')`Tape`, (was) => setTape(was, helps.from, helps.to, length))
      }
    />
  );
};
