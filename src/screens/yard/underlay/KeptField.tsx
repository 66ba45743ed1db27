import { useState } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import { keepUnderlay } from '../../../site/edits/keepUnderlay.ts';
import type { UnderlayId } from '../../../site/ids.ts';
import type { Underlay } from '../../../site/underlay.ts';
import { pictureOf } from '../../../store/pictureBytes.ts';
import { attempt } from '../../attempt.ts';
import { useBench, useSite } from '../../bench.ts';
import { useStored } from '../../useStored.ts';
import { BringPicture } from './BringPicture.tsx';

type Place = 'file' | 'device';

const labels: Readonly<Record<Place, string>> = {
  file: phrase`In the site file`,
  device: phrase`Beside it, on this device`,
};

/** Where the bytes of a picture are kept: with the site wherever that goes, or on this device alone. */
export const KeptField = ({
  id,
  underlay,
}: {
  readonly id: UnderlayId;
  readonly underlay: Underlay;
}) => {
  const bench = useBench();
  const { picture, file } = underlay;
  const place: Place = picture in useSite().pictures ? 'file' : 'device';
  const entry = useStored(bench.pictures.shown, (state) => state.get(id));
  const [fault, setFault] = useState<string | null>(null);
  const keep = async (to: Place) => {
    const bytes = await bench.pictures.bytes(picture);
    if (bytes === null)
      return setFault(phrase`${file} is not on this device: bring it again first`);
    // on the device before it leaves the file, so that it is never nowhere
    const unkept = to === 'device' ? await bench.pictures.put(picture, bytes) : null;
    const kept = to === 'file' ? await pictureOf(bytes) : null;
    if (unkept !== null || (to === 'file' && kept === null)) {
      return setFault(unkept ?? phrase`${file} cannot be kept in a file`);
    }
    setFault(
      attempt(bench, {
        label: to === 'file' ? phrase`Keep picture in file` : phrase`Keep picture on device`,
        on: (was) => keepUnderlay(was, id, kept),
      }),
    );
  };
  return (
    <fieldset>
      <legend>{phrase`Kept`}</legend>
      <div className="choices" role="group" aria-label={phrase`Kept`}>
        {(['file', 'device'] as const).map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === place}
            onClick={() => void keep(one)}
          >
            {labels[one]}
          </button>
        ))}
      </div>
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      {entry?.shown.is === 'missing' && (
        <>
          <p className="fault">{phrase`${file} is not on this device.`}</p>
          <BringPicture label={phrase`Bring it again`} />
        </>
      )}
      {entry?.shown.is === 'unreadable' && <p className="fault">{entry.shown.why}</p>}
    </fieldset>
  );
};
