import { phrase } from '../../../phrases/phrase.ts';
import { setTrusts } from '../../../site/edits/setTrusts.ts';
import type { Site } from '../../../site/site.ts';
import { formatAngle } from '../../../units/formatAngle.ts';
import { inches } from '../../../units/inches.ts';
import { parseAngle } from '../../../units/parseAngle.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { useEdit } from '../cards/useEdit.ts';

/** A hundred feet, in which the trust in a tape is spoken of. */
const hundredFeet = 1200;

/** How far the readings of a site are trusted, by their kinds. */
export const TrustFields = () => {
  const { trusts, lengths } = useSite();
  const edit = useEdit();
  const set = (fields: Partial<Site['trusts']>) =>
    edit(phrase`Change trust`, (was) => setTrusts(was, fields));
  const angle = (label: string, name: 'square' | 'bearing') => (
    <TextField
      label={label}
      keys="decimal"
      value={formatAngle(trusts[name])}
      onEnter={(text) => {
        const read = parseAngle(text);
        return read.ok ? set({ [name]: read.value }) : read.reason;
      }}
    />
  );
  const length = (label: string, name: 'tapeLeast' | 'straight' | 'offset') => (
    <LengthField
      label={label}
      value={trusts[name]}
      style={lengths}
      onEnter={(value) => set({ [name]: value })}
    />
  );
  return (
    <details className="more">
      <summary>{phrase`How far readings are trusted`}</summary>
      <div className="stack">
        <p className="note">
          {phrase`One standard deviation: two readings of three come nearer than this. Common practice, no published source; change them to what your tape and your crew do.`}
        </p>
        <div className="pair">
          {length(phrase`A tape, ±`, 'tapeLeast')}
          <LengthField
            label={phrase`and for each 100 ft, ±`}
            value={inches(trusts.tapeShare * hundredFeet)}
            style={lengths}
            onEnter={(value) => set({ tapeShare: value / hundredFeet })}
          />
        </div>
        <div className="pair">
          {length(phrase`Square off a line, ±`, 'offset')}
          {length(phrase`In line, ±`, 'straight')}
        </div>
        <div className="pair">
          {angle(phrase`A square corner, ± °`, 'square')}
          {angle(phrase`A bearing, ± °`, 'bearing')}
        </div>
      </div>
    </details>
  );
};
