import { useState } from 'react';
import { toSite } from '../../../editor/view.ts';
import { lotPoints } from '../../../engine/calls/lotPoints.ts';
import { boundsOf } from '../../../geometry/bounds.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { drawLot, type LotPoint } from '../../../site/edits/drawLot.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Place } from '../../../site/markAt.ts';
import { nextId } from '../../../site/nextId.ts';
import { attempt } from '../../attempt.ts';
import { useBench, useSession, useSite, type Bench } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { fitAll } from '../../fitAll.ts';
import type { ReadCalls } from './useCalls.ts';

/** How far straight pieces in place of a curve may lie inside it, inches: less than a pin is wide. */
const off = 1 / 2;

/** A list longer than this is none to choose from. */
const mostMarks = 60;

const atSelected = phrase`at the mark that is selected`;

/** Where the point of beginning goes, so that the lot lies in the middle of what the pad shows. */
const middleOf = ({ pad, session }: Bench, points: readonly LotPoint[]): SitePoint => {
  const { width, height } = pad.getState() ?? { width: 0, height: 0 };
  const middle = toSite(session.getState().view, { x: width / 2, y: height / 2 });
  const { minX, minY, maxX, maxY } = boundsOf(points) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return { x: middle.x - (minX + maxX) / 2, y: middle.y - (minY + maxY) / 2 };
};

/** Marks that the point of beginning may be: the selected one, and those that have a name. */
const usePlaces = (): readonly { readonly value: MarkId | 'middle'; readonly label: string }[] => {
  const { marks } = useSite();
  const selection = useSession((state) => state.selection);
  const selected = selection?.kind === 'mark' ? selection.id : null;
  const named = (Object.keys(marks) as MarkId[])
    .filter((id) => id === selected || (marks[id]?.label.trim() ?? '') !== '')
    .slice(0, mostMarks);
  return [
    { value: 'middle', label: phrase`in the middle of the pad` },
    ...named.map((value) => {
      const name = marks[value]?.label.trim() ?? '';
      return {
        value,
        label: name === '' ? atSelected : phrase`at ${name}`,
      };
    }),
  ];
};

/** Draws the calls on the pad, and says what that is. */
export const LotKeys = ({ calls, told, onClose }: ReadCalls & { readonly onClose: () => void }) => {
  const bench = useBench();
  const site = useSite();
  const places = usePlaces();
  const selected = places.find(({ label }) => label === atSelected);
  const [place, setPlace] = useState<MarkId | 'middle'>(selected?.value ?? 'middle');
  const [label, setLabel] = useState(phrase`Lot`);
  const [fault, setFault] = useState<string | null>(null);
  const closed = told.lot !== null;
  const draw = () => {
    const points = lotPoints(told, calls.start, off);
    const at: Place = place === 'middle' ? middleOf(bench, points) : place;
    const id = nextId(site, 'feature');
    const said = attempt(bench, {
      label: closed ? phrase`Draw lot` : phrase`Draw lot lines`,
      on: (was) => drawLot(was, { label, closed, points }, at),
    });
    setFault(said);
    if (said !== null) return;
    bench.session.setState({ selection: { kind: 'feature', id }, tool: 'select' });
    fitAll(bench);
    onClose();
  };
  return (
    <section aria-label={phrase`Draw it`}>
      <div className="pair">
        <TextField
          label={phrase`Name of the lot`}
          value={label}
          onEnter={(text) => {
            setLabel(text.trim());
            return null;
          }}
        />
        <ChoiceField
          label={phrase`It begins`}
          value={place}
          choices={places}
          onChoose={(value) => setPlace(value)}
        />
      </div>
      <p className="note">
        {phrase`North of the deed is up on the pad. Corners are drawn as fixed marks: tapes hang on them and do not move them.`}{' '}
        {told.courses.some(({ curve }) => curve !== null) && (
          <>
            {phrase`Curved sides are drawn as straight pieces that lie at most 1/2 in inside them.`}{' '}
          </>
        )}
        {!closed &&
          phrase`The calls do not come back: their sides are drawn as they are, not balanced.`}
      </p>
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      <div className="choices">
        <button type="button" className="chief" disabled={told.courses.length === 0} onClick={draw}>
          {closed ? phrase`Draw the lot` : phrase`Draw these sides`}
        </button>
      </div>
    </section>
  );
};
