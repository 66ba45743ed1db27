import type { SitePoint } from '../../../geometry/point.ts';
import { markName } from '../../../engine/survey/markName.ts';
import { addObservation } from '../../../site/edits/addObservation.ts';
import { fixMarks, freeMarks } from '../../../site/edits/fixMarks.ts';
import { removeObservations } from '../../../site/edits/removeObservations.ts';
import type { MarkId, ObservationId } from '../../../site/ids.ts';
import { marksObserved } from '../../../site/marksObserved.ts';
import type { Observation } from '../../../site/observation.ts';
import type { Site } from '../../../site/site.ts';
import { turnsAt, type Turn } from '../../../site/turnsAt.ts';
import { radians } from '../../../units/radians.ts';
import { useLayout, useSite } from '../../bench.ts';
import { TickField } from '../../fields/TickField.tsx';
import { ObservationRow } from '../survey/ObservationRow.tsx';
import { compassName } from '../../../units/compassName.ts';
import { TieKeys } from './TieKeys.tsx';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

type Kind = 'square' | 'straight';

/** What was said of a turn of one kind, whichever way round it was told. */
const saidOf = (site: Site, kind: Kind, { at, from, to }: Turn): ObservationId[] =>
  (Object.entries(site.observations) as [ObservationId, Observation][])
    .filter(
      ([, seen]) =>
        seen.kind === kind &&
        seen.at === at &&
        [seen.from, seen.to].toSorted().join() === [from, to].toSorted().join(),
    )
    .map(([id]) => id);

const labels: Readonly<Record<Kind, (from: string, to: string) => string>> = {
  square: (from, to) => phrase`Between ${from} and ${to} it is a square corner`,
  straight: (from, to) => phrase`Between ${from} and ${to} it is in line`,
};

const TurnTick = ({ turn, kind }: { readonly turn: Turn; readonly kind: Kind }) => {
  const site = useSite();
  const { posts } = useLayout();
  const make = useDo();
  const said = saidOf(site, kind, turn);
  const [from, to] = [markName(site, posts, turn.from), markName(site, posts, turn.to)];
  return (
    <TickField
      label={labels[kind](from, to)}
      ticked={said.length > 0}
      onTick={(ticked) =>
        make(kind === 'square' ? phrase`Square corner` : phrase`In line`, (was) =>
          ticked
            ? addObservation(was, { kind, ...turn, trust: null, label: '' })
            : removeObservations(was, said),
        )
      }
    />
  );
};

/** That nothing holds a mark, and which way where it is only one. */
const looseText = ([way, other]: readonly SitePoint[]): string => {
  if (way === undefined || other !== undefined)
    return phrase`Loose: no tape holds it to the rest. It stands as sketched.`;
  const one = compassName(radians(Math.atan2(way.y, way.x)));
  const back = compassName(radians(Math.atan2(-way.y, -way.x)));
  return phrase`Loose: it may still give ${one} or ${back}, where it stands as sketched.`;
};

/** What holds a mark in its place: fixed, a square corner, in line, and every tape of it. */
export const MarkSurvey = ({ id }: { readonly id: MarkId }) => {
  const site = useSite();
  const { survey } = useLayout();
  const make = useDo();
  const mark = site.marks[id];
  if (mark === undefined) return null;
  const seen = (Object.entries(site.observations) as [ObservationId, Observation][]).filter(
    ([, one]) => Object.values(marksObserved(one)).includes(id),
  );
  const firm = seen.filter(([, one]) => one.kind !== 'fix').length;
  const loose = survey.stands !== 'sketched' && survey.loose.includes(id);
  return (
    <details className="more" open={firm > 0 && firm < 4}>
      <summary>{firm === 0 ? phrase`What holds it` : phrase`What holds it: ${firm}`}</summary>
      <div className="stack">
        {loose && <p className="note">{looseText(survey.ways[id] ?? [])}</p>}
        <TickField
          label={phrase`Fixed: no tape moves it`}
          ticked={mark.fixed}
          onTick={(fixed) =>
            make(fixed ? phrase`Fix mark` : phrase`Free mark`, (was) =>
              fixed ? fixMarks(was, [id]) : freeMarks(was, [id]),
            )
          }
        />
        {turnsAt(site, id).map((turn) => (
          <div key={`${turn.from} ${turn.to}`}>
            <TurnTick turn={turn} kind="square" />
            <TurnTick turn={turn} kind="straight" />
          </div>
        ))}
        <ol className="plain">
          {seen.map(([one, observation]) => (
            <ObservationRow key={one} id={one} seen={observation} />
          ))}
        </ol>
        <TieKeys id={id} seen={seen.map(([, one]) => one)} />
        {firm === 0 && (
          <p className="note">
            {phrase`Take the Tape tool, tap this mark and another, and type what it reads.`}
          </p>
        )}
      </div>
    </details>
  );
};
