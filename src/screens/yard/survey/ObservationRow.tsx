import { observationName } from '../../../engine/survey/observationName.ts';
import { changeObservation } from '../../../site/edits/changeObservation.ts';
import { removeObservations } from '../../../site/edits/removeObservations.ts';
import type { ObservationId } from '../../../site/ids.ts';
import type { Observation } from '../../../site/observation.ts';
import { principalAngle } from '../../../geometry/principalAngle.ts';
import { inches } from '../../../units/inches.ts';
import { useLayout, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { formatAzimuth, parseAzimuth } from '../../../units/azimuth.ts';
import { useDo, useEdit } from '../cards/useEdit.ts';
import { readingText } from '../../../engine/survey/readingText.ts';
import { phrase, sentenceCase } from '../../../phrases/phrase.ts';
import { TrustField } from './TrustField.tsx';

interface Props {
  readonly id: ObservationId;
  readonly seen: Observation;
}

/** What was read, where it is a figure that can be typed. */
const FigureField = ({ id, seen, label }: Props & { readonly label: string }) => {
  const { lengths } = useSite();
  const edit = useEdit();
  if (seen.kind === 'tape') {
    return (
      <LengthField
        label={label}
        value={seen.length}
        style={lengths}
        onEnter={(length) =>
          edit(phrase`Change tape`, (was) => changeObservation(was, id, { length }))
        }
      />
    );
  }
  if (seen.kind === 'offset') {
    const side = seen.distance < 0 ? -1 : 1;
    return (
      <LengthField
        label={label}
        value={inches(Math.abs(seen.distance))}
        style={lengths}
        onEnter={(length) =>
          edit(phrase`Change offset`, (was) =>
            changeObservation(was, id, { distance: inches(side * length) }),
          )
        }
      />
    );
  }
  if (seen.kind !== 'bearing') return <p>{label}</p>;
  return (
    <TextField
      label={phrase`${label}, ° clockwise from north`}
      keys="decimal"
      value={formatAzimuth(seen.bearing)}
      onEnter={(text) => {
        const angle = parseAzimuth(text);
        if (!angle.ok) return angle.reason;
        return edit(phrase`Change bearing`, (was) =>
          changeObservation(was, id, { bearing: principalAngle(angle.value) }),
        );
      }}
    />
  );
};

/** One observation: what it reads, how it agrees with the others, how far it is trusted. */
export const ObservationRow = ({ id, seen }: Props) => {
  const site = useSite();
  const { posts, survey } = useLayout();
  const make = useDo();
  const name = observationName(site, posts, seen);
  const label = sentenceCase(name);
  const reading = survey.readings[id];
  const suspect = survey.suspects.some(({ ids }) => ids.includes(id));
  return (
    <li className={suspect ? 'observation suspect' : 'observation'} aria-label={label}>
      <FigureField id={id} seen={seen} label={label} />
      {reading !== undefined && (
        <p className={suspect ? 'fault' : 'note'}>{readingText(seen, reading, site.lengths)}</p>
      )}
      <details className="more">
        <summary>{phrase`More`}</summary>
        <div className="stack">
          <TrustField id={id} seen={seen} />
          <button
            type="button"
            aria-label={phrase`Take out ${name}`}
            onClick={() => make(phrase`Take out reading`, (was) => removeObservations(was, [id]))}
          >
            {phrase`Take out`}
          </button>
        </div>
      </details>
    </li>
  );
};
