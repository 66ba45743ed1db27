import type { Layout, Leg, Run } from '../../../engine/layout.ts';
import { withoutLeg } from '../../../editor/withoutLeg.ts';
import { movedTogether } from '../../../editor/movedTogether.ts';
import { bearing } from '../../../geometry/bearing.ts';
import { midpoint } from '../../../geometry/midpoint.ts';
import { trackAt } from '../../../geometry/track.ts';
import { setLegLength } from '../../../site/edits/setLegLength.ts';
import { turnMarks } from '../../../site/edits/turnMarks.ts';
import { splitLeg } from '../../../site/edits/splitLeg.ts';
import { legsOf } from '../../../site/legsOf.ts';
import type { LineId, VertexId } from '../../../site/ids.ts';
import { nextId } from '../../../site/nextId.ts';
import type { Site } from '../../../site/site.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { radians, type Radians } from '../../../units/radians.ts';
import { useBench, useLayout, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { formatAzimuth, parseAzimuth } from '../../../units/azimuth.ts';
import { bayReasons } from '../../help/why/bayReasons.ts';
import { Why } from '../../help/why/Why.tsx';
import { CurveFields } from './CurveFields.tsx';
import { GradeFields } from './GradeFields.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { WallFields } from './WallFields.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly line: LineId;
  readonly id: VertexId;
}

/** Turns a leg about its start: its far mark keeps its distance, and takes along what tapes hold to it. */
const turnLeg = (site: Site, { line, id, survey }: Props & Pick<Layout, 'survey'>, to: Radians) => {
  const fence = site.lines[line];
  const leg = fence === undefined ? undefined : legsOf(fence).find((one) => one.id === id);
  const [start, end] = leg === undefined ? [] : [site.marks[leg.start], site.marks[leg.end]];
  if (leg === undefined || start === undefined || end === undefined) {
    throw new RangeError(phrase`leg: expected one of ${line}, found “${id}”`);
  }
  const marks = movedTogether(survey, [leg.end]);
  return turnMarks(site, { marks, about: start, by: radians(to - bearing(start, end)) });
};

/** The bays of a run as one says them: how many of what length. */
const bayText = (run: Run, lengths: Site['lengths']): string => {
  const texts = run.spaces.flatMap((space) =>
    space.kind === 'bay' ? [formatLength(space.length, lengths)] : [],
  );
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return [...counts].map(([text, count]) => phrase`${count} at ${text}`).join(', ');
};

const Bays = ({ leg, runs }: { readonly leg: Leg; readonly runs: readonly Run[] }) => {
  const site = useSite();
  const bays = runs
    .filter((run) => run.legs.includes(leg.id))
    .map((run) => bayText(run, site.lengths))
    .filter((text) => text !== '');
  if (bays.length === 0) return null;
  return (
    <Why of={phrase`the bays of this leg`} reasons={() => bayReasons(leg, runs, site)}>
      <p className="note">{phrase`Bays: ${bays.join('; ')}`}</p>
    </Why>
  );
};

/** One leg: how long, which way, how its bays come out. */
export const LegCard = (props: Props) => {
  const { line, id } = props;
  const site = useSite();
  const { lines, survey } = useLayout();
  const laid = lines[line];
  const { session } = useBench();
  const edit = useEdit();
  const make = useDo();
  const leg = laid?.legs.find((one) => one.id === id);
  if (leg === undefined) return null;
  const name = site.lines[line]?.label;
  const middle = leg.bow === 0 ? midpoint(leg.start, leg.end) : trackAt(leg, leg.length / 2);
  const split = () => {
    const mark = nextId(site, 'mark');
    make(phrase`Add mark`, (was) => splitLeg(was, line, id, middle));
    session.setState({ tool: 'select', selection: { kind: 'mark', id: mark } });
  };
  return (
    <section aria-label={phrase`Leg`}>
      <LengthField
        label={leg.bow === 0 ? phrase`Length` : phrase`Length along the curve`}
        value={leg.length}
        style={site.lengths}
        onEnter={(length) =>
          edit(phrase`Set leg length`, (was) => setLegLength(was, line, id, length))
        }
      />
      <TextField
        label={phrase`Direction, ° clockwise from north`}
        keys="decimal"
        value={formatAzimuth(leg.bearing)}
        onEnter={(text) => {
          const angle = parseAzimuth(text);
          return angle.ok
            ? edit(phrase`Turn leg`, (was) => turnLeg(was, { ...props, survey }, angle.value))
            : angle.reason;
        }}
      />
      <CurveFields line={line} leg={leg} />
      <WallFields line={line} leg={leg} />
      <GradeFields line={line} leg={leg} />
      <Bays leg={leg} runs={laid?.runs ?? []} />
      <div className="choices">
        <button type="button" onClick={split}>
          {phrase`Add a mark in the middle`}
        </button>
        <button
          type="button"
          onClick={() => make(phrase`Delete leg`, (was) => withoutLeg(was, line, id))}
        >
          {phrase`Delete leg`}
        </button>
      </div>
      <button
        type="button"
        onClick={() => session.setState({ selection: { kind: 'line', id: line } })}
      >
        {name === undefined || name === '' ? phrase`Whole line` : phrase`Whole line: ${name}`}
      </button>
    </section>
  );
};
