import './underlay.css';
import { turnKnob } from '../../../editor/turnKnob.ts';
import { distance } from '../../../geometry/distance.ts';
import { pictureMap } from '../../../geometry/pictureMap.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { changeUnderlay } from '../../../site/edits/changeUnderlay.ts';
import { placeUnderlay } from '../../../site/edits/placeUnderlay.ts';
import { removeUnderlay } from '../../../site/edits/removeUnderlay.ts';
import { scaleUnderlay } from '../../../site/edits/scaleUnderlay.ts';
import type { UnderlayId } from '../../../site/ids.ts';
import { tiesOf } from '../../../site/tiesOf.ts';
import type { Underlay } from '../../../site/underlay.ts';
import { underlayUp } from '../../../site/underlayUp.ts';
import { inches } from '../../../units/inches.ts';
import { radians } from '../../../units/radians.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { formatAzimuth, parseAzimuth } from '../../../units/azimuth.ts';
import { useDo, useEdit } from '../cards/useEdit.ts';
import { FadeField } from './FadeField.tsx';
import { KeptField } from './KeptField.tsx';
import { WayKeys } from './WayKeys.tsx';

interface Props {
  readonly id: UnderlayId;
}

const sizeNote = ({ size, ties }: Underlay): string => {
  if (Object.keys(ties).length === 4) return phrase`Straightened by four points.`;
  return size === 'told'
    ? phrase`Its size was told.`
    : phrase`Its size is a guess: say it by points, before anything is drawn from it.`;
};

/** How wide a picture that was not straightened lies, and which way up: both can be typed. */
const LiesFields = ({ id, underlay }: Props & { readonly underlay: Underlay }) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const flat = tiesOf(underlay).length === 2;
  const [from, to] = [
    { x: 0, y: 0 },
    { x: underlay.width, y: 0 },
  ];
  const { toSite } = pictureMap(tiesOf(underlay));
  return (
    <div className="pair">
      {flat && (
        <LengthField
          label={phrase`All of it is so wide`}
          value={inches(distance(toSite(from), toSite(to)))}
          style={lengths}
          onEnter={(length) =>
            edit(phrase`Size picture`, (was) => scaleUnderlay(was, id, { from, to, length }))
          }
        />
      )}
      <TextField
        label={phrase`Up on it, ° from north`}
        keys="decimal"
        value={formatAzimuth(underlayUp(underlay))}
        onEnter={(text) => {
          const angle = parseAzimuth(text);
          const about = turnKnob(underlay)?.about;
          if (!angle.ok) return angle.reason;
          if (about === undefined) return phrase`It shows no ground to be turned about`;
          const turn = radians(angle.value - underlayUp(underlay));
          return edit(phrase`Turn picture`, (was) =>
            placeUnderlay(was, id, { about, turn, times: 1, by: { x: 0, y: 0 } }),
          );
        }}
      />
    </div>
  );
};

/** A picture under the drawing: how it lies, how much of it shows, whether it is locked, where it is kept. */
export const UnderlayCard = ({ id }: Props) => {
  const edit = useEdit();
  const make = useDo();
  const underlay = useSite().underlays[id];
  if (underlay === undefined) return null;
  const { label, locked, shows } = underlay;
  return (
    <section aria-label={phrase`Picture under the drawing`}>
      <p className="note">
        {sizeNote(underlay)} {phrase`It is not printed on the crew sheet.`}
      </p>
      {!locked && (
        <>
          <WayKeys />
          <LiesFields id={id} underlay={underlay} />
        </>
      )}
      <FadeField id={id} shows={shows} />
      <TickField
        label={phrase`Locked`}
        ticked={locked}
        onTick={(ticked) =>
          make(ticked ? phrase`Lock picture` : phrase`Unlock picture`, (was) =>
            changeUnderlay(was, id, { locked: ticked }),
          )
        }
      />
      <TextField
        label={phrase`Name`}
        value={label}
        onEnter={(text) =>
          edit(phrase`Name picture`, (was) => changeUnderlay(was, id, { label: text.trim() }))
        }
      />
      <KeptField id={id} underlay={underlay} />
      <button
        type="button"
        onClick={() => make(phrase`Remove picture`, (was) => removeUnderlay(was, id))}
      >
        {phrase`Remove picture`}
      </button>
    </section>
  );
};
