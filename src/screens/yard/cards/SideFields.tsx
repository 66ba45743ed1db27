import { bearing } from '../../../geometry/bearing.ts';
import { distance } from '../../../geometry/distance.ts';
import { midpoint } from '../../../geometry/midpoint.ts';
import { setSideLength } from '../../../site/edits/setSideLength.ts';
import { splitSide } from '../../../site/edits/splitSide.ts';
import type { FeatureId } from '../../../site/ids.ts';
import type { DrawnLeg } from '../../../site/legsOf.ts';
import { legGround } from '../../../site/legGround.ts';
import { nextId } from '../../../site/nextId.ts';
import { sidesOf } from '../../../site/sideAt.ts';
import { inches } from '../../../units/inches.ts';
import { useBench, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { compassName } from '../../../units/compassName.ts';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly id: FeatureId;
  readonly side: DrawnLeg;
  readonly n: number;
}

const SideField = ({ id, side, n }: Props) => {
  const site = useSite();
  const { session } = useBench();
  const edit = useEdit();
  const make = useDo();
  const { start, end } = legGround(site, side);
  const split = () => {
    const mark = nextId(site, 'mark');
    make(phrase`Add corner`, (was) => splitSide(was, id, side.id, midpoint(start, end)));
    session.setState({ tool: 'select', selection: { kind: 'mark', id: mark } });
  };
  return (
    <div className="side">
      <LengthField
        label={phrase`Side ${n}, going ${compassName(bearing(start, end))}`}
        value={inches(distance(start, end))}
        style={site.lengths}
        onEnter={(length) =>
          edit(phrase`Set side length`, (was) => setSideLength(was, id, side.id, length))
        }
      />
      <button type="button" aria-label={phrase`Add a corner to side ${n}`} onClick={split}>
        {phrase`Add corner`}
      </button>
    </div>
  );
};

/** The sides of a feature: how long each is, and a corner for each that is asked for. */
export const SideFields = ({ id }: { readonly id: FeatureId }) => {
  const sides = sidesOf(useSite(), id);
  return (
    <details className="more" open={sides.length <= 6}>
      <summary>{phrase`Sides and corners`}</summary>
      <div className="sides">
        {sides.map((side, n) => (
          <SideField key={side.id} id={id} side={side} n={n + 1} />
        ))}
        <p className="note">{phrase`To take a corner out, tap its mark on the pad.`}</p>
      </div>
    </details>
  );
};
