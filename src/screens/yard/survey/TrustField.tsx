import { isAngle } from '../../../engine/survey/figureText.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { changeObservation } from '../../../site/edits/changeObservation.ts';
import type { ObservationId } from '../../../site/ids.ts';
import type { Observation } from '../../../site/observation.ts';
import { parseAngle } from '../../../units/parseAngle.ts';
import { formatAngle } from '../../../units/formatAngle.ts';
import type { Inches } from '../../../units/inches.ts';
import type { Radians } from '../../../units/radians.ts';
import { useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { MaybeLengthField } from '../../fields/MaybeLengthField.tsx';
import { formatLength } from '../../../units/formatLength.ts';
import { useEdit } from '../cards/useEdit.ts';

interface Props {
  readonly id: ObservationId;
  readonly seen: Observation;
}

/** How far one reading is trusted, where somebody says; empty leaves it to what the site trusts its kind by. */
export const TrustField = ({ id, seen }: Props) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const change = (fields: Parameters<typeof changeObservation>[2]) =>
    edit(phrase`Change trust`, (was) => changeObservation(was, id, fields));
  if (seen.kind === 'fix') return null;
  if (!isAngle(seen.kind)) {
    return (
      <MaybeLengthField
        label={phrase`Trusted to, ±`}
        value={seen.trust as Inches | null}
        style={lengths}
        write={formatLength}
        note={phrase`Empty: as all of its kind`}
        onEnter={(trust) => change({ trust })}
      />
    );
  }
  return (
    <TextField
      label={phrase`Trusted to, ± °`}
      keys="decimal"
      value={seen.trust === null ? '' : formatAngle(seen.trust as Radians)}
      onEnter={(text) => {
        if (text.trim() === '') return change({ trust: null });
        const angle = parseAngle(text);
        return angle.ok ? change({ trust: angle.value }) : angle.reason;
      }}
    />
  );
};
