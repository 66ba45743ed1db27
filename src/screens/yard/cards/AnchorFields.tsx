import type { GateLayout, Leg } from '../../../engine/layout.ts';
import { moveGate } from '../../../site/edits/moveGate.ts';
import type { Gate } from '../../../site/gate.ts';
import type { GateId } from '../../../site/ids.ts';
import { dot } from '../../../geometry/dot.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { nearestOnTrack } from '../../../geometry/track.ts';
import { subtract } from '../../../geometry/subtract.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { useLayout, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

const froms = [
  { value: 'start', label: phrase`Start of leg` },
  { value: 'middle', label: phrase`Middle of leg` },
  { value: 'end', label: phrase`End of leg` },
] as const;

const said = {
  start: phrase`To the near post’s centre`,
  middle: phrase`Middle of leg to middle of opening`,
  end: phrase`To the near post’s centre`,
} as const;

/** The offset that leaves the gate where it is when it is anchored from elsewhere on its leg. */
const offsetFrom = (from: Gate['anchor']['from'], leg: Leg, gate: GateLayout): Inches => {
  const { length } = leg;
  if (length === 0) return inches(0);
  const along = subtract(leg.end, leg.start);
  const at = (point: SitePoint): number =>
    leg.bow === 0
      ? dot(subtract(point, leg.start), along) / length
      : nearestOnTrack(point, leg).along;
  if (from === 'start') return inches(at(gate.start));
  return inches(from === 'end' ? length - at(gate.end) : at(gate.middle) - length / 2);
};

/** Where a gate stands on its leg. */
export const AnchorFields = ({ id, gate }: { readonly id: GateId; readonly gate: Gate }) => {
  const { lengths } = useSite();
  const { lines, gates } = useLayout();
  const edit = useEdit();
  const make = useDo();
  const leg = lines[gate.line]?.legs.find((one) => one.id === gate.leg);
  const laid = gates[id];
  return (
    <div className="pair">
      <ChoiceField
        label={phrase`Measured from`}
        value={gate.anchor.from}
        choices={froms}
        onChoose={(from) => {
          if (leg === undefined || laid === undefined) return;
          const offset = offsetFrom(from, leg, laid);
          make(phrase`Anchor gate`, (was) => moveGate(was, id, { from, offset }));
        }}
      />
      <LengthField
        label={said[gate.anchor.from]}
        value={gate.anchor.offset}
        style={lengths}
        onEnter={(offset) =>
          edit(phrase`Move gate`, (was) => moveGate(was, id, { ...gate.anchor, offset }))
        }
      />
    </div>
  );
};
