import { edgeName } from '../../../editor/list/edgeName.ts';
import type { ToldPlace } from '../../../editor/list/toldPlace.ts';
import { markName } from '../../../engine/survey/markName.ts';
import type { MarkId } from '../../../site/ids.ts';
import { capital } from '../../../editor/list/rowWords.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { useLayout, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FigureField } from './FigureField.tsx';
import type { Place } from './usePlace.ts';

const bys = [
  { value: 'mark', label: phrase`At a mark` },
  { value: 'way', label: phrase`So far from a mark` },
  { value: 'edge', label: phrase`On a leg or a side` },
  { value: 'figures', label: phrase`East and north` },
] as const satisfies readonly { value: ToldPlace['by']; label: string }[];

/** Chooses one of the marks of the yard by its name. */
export const MarkField = ({
  label,
  mark,
  except,
  onMark,
}: {
  readonly label: string;
  readonly mark: MarkId | null;
  readonly except?: MarkId;
  readonly onMark: (mark: MarkId) => void;
}) => {
  const site = useSite();
  const { posts } = useLayout();
  const all = (Object.keys(site.marks) as MarkId[]).filter((id) => id !== except);
  const choices = all.map((id) => ({ value: id, label: capital(markName(site, posts, id)) }));
  return (
    <ChoiceField
      label={label}
      value={mark !== null && all.includes(mark) ? mark : (all[0] ?? 'mark:')}
      choices={choices}
      onChoose={onMark}
    />
  );
};

/** The legs and sides to choose from, from which of its ends one measures, and how far. */
export const EdgeFields = ({
  place,
  far,
}: {
  readonly place: Place;
  /** What the figure is of, such as `How far`. */
  readonly far: string;
}) => {
  const site = useSite();
  const layout = useLayout();
  const { text, edges, say } = place;
  const on = edges[text.edge] ?? edges[0];
  if (on === undefined) return <p className="note">{phrase`There is no leg and no side yet.`}</p>;
  const [start, end] = on.marks.map((id) => markName(site, layout.posts, id));
  return (
    <>
      <ChoiceField
        label={phrase`Leg or side`}
        value={`${edges.indexOf(on)}`}
        choices={edges.map((edge, n) => ({
          value: `${n}`,
          label: capital(edgeName(site, layout, edge)),
        }))}
        onChoose={(n) => say({ edge: Number(n) })}
      />
      <div className="pair">
        <ChoiceField
          label={phrase`Measured from`}
          value={text.from}
          choices={[
            { value: 'start', label: capital(start ?? phrase`its start`) },
            { value: 'middle', label: phrase`Its middle` },
            { value: 'end', label: capital(end ?? phrase`its end`) },
          ]}
          onChoose={(from) => say({ from })}
        />
        <FigureField label={far} text={text.far} onText={(typed) => say({ far: typed })} />
      </div>
    </>
  );
};

/** A direction in words or degrees, and how far that way. */
export const WayFields = ({
  far,
  way,
  onSay,
}: {
  readonly far: string;
  readonly way: string;
  readonly onSay: (change: { readonly far?: string; readonly way?: string }) => void;
}) => (
  <div className="pair">
    <FigureField label={phrase`How far`} text={far} onText={(typed) => onSay({ far: typed })} />
    <FigureField
      label={phrase`Direction`}
      text={way}
      note={phrase`Such as north-east, SW, or degrees clockwise from north.`}
      onText={(typed) => onSay({ way: typed })}
    />
  </div>
);

/** Says a place on the ground without pointing at it. */
export const PlaceFields = ({ place }: { readonly place: Place }) => {
  const { text, bare, edges, say } = place;
  const offered = bys.filter(({ value }) => {
    if (value === 'edge') return edges.length > 0;
    return value === 'figures' || !bare;
  });
  return (
    <>
      <ChoiceField
        label={phrase`Where`}
        value={text.by}
        choices={offered}
        onChoose={(by) => say({ by })}
      />
      {(text.by === 'mark' || text.by === 'way') && (
        <MarkField label={phrase`Mark`} mark={text.mark} onMark={(mark) => say({ mark })} />
      )}
      {text.by === 'way' && <WayFields far={text.far} way={text.way} onSay={say} />}
      {text.by === 'edge' && <EdgeFields place={place} far={phrase`How far`} />}
      {text.by === 'figures' && (
        <div className="pair">
          <FigureField label={phrase`East`} text={text.east} onText={(east) => say({ east })} />
          <FigureField label={phrase`North`} text={text.north} onText={(north) => say({ north })} />
        </div>
      )}
    </>
  );
};
