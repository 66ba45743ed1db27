import { nearestMark } from '../../../editor/nearestMark.ts';
import { joinMarks } from '../../../site/edits/joinMarks.ts';
import { moveMark } from '../../../site/edits/moveMark.ts';
import { renameMark } from '../../../site/edits/renameMark.ts';
import type { MarkId } from '../../../site/ids.ts';
import { inches } from '../../../units/inches.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useBench, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { PostHere } from '../../help/why/PostFigures.tsx';
import { MarkSurvey } from './MarkSurvey.tsx';
import { RoughFix } from '../walk/RoughFix.tsx';
import { SightKeys } from './SightKeys.tsx';
import { spareMarks } from './spareMarks.ts';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** The nearest mark is offered to be joined to within this, 30 ft. */
const joinsWithin = 360;

/** What can be done with a mark besides moving it. */
const MarkKeys = ({ id }: { readonly id: MarkId }) => {
  const site = useSite();
  const { session } = useBench();
  const make = useDo();
  const near = nearestMark(site, id);
  const spares = spareMarks(site, id);
  const join = (into: MarkId) => {
    make(phrase`Join marks`, (was) => joinMarks(was, id, into));
    session.setState(({ selection }) =>
      selection === null ? { selection: { kind: 'mark', id: into } } : {},
    );
  };
  return (
    <div className="stack">
      {near !== null && near.away <= joinsWithin && (
        <button type="button" onClick={() => join(near.id)}>
          {phrase`Join to the nearest mark, ${formatLength(near.away, site.lengths)} away`}
        </button>
      )}
      {spares.map(({ key, name, without }) => (
        <button key={key} type="button" onClick={() => make(phrase`Take out mark`, without)}>
          {phrase`Take out of ${name}`}
        </button>
      ))}
    </div>
  );
};

/** A mark: where it is on the ground. */
export const MarkCard = ({ id }: { readonly id: MarkId }) => {
  const site = useSite();
  const edit = useEdit();
  const mark = site.marks[id];
  if (mark === undefined) return null;
  const move = (to: { readonly x?: number; readonly y?: number }) =>
    edit(phrase`Move mark`, (was) => moveMark(was, id, { x: mark.x, y: mark.y, ...to }));
  return (
    <section aria-label={phrase`Mark`}>
      <TextField
        label={phrase`Name`}
        value={mark.label}
        onEnter={(text) => edit(phrase`Name mark`, (was) => renameMark(was, id, text.trim()))}
      />
      <div className="pair">
        <LengthField
          label={phrase`East`}
          value={inches(mark.x)}
          style={site.lengths}
          onEnter={(x) => move({ x })}
        />
        <LengthField
          label={phrase`North`}
          value={inches(mark.y)}
          style={site.lengths}
          onEnter={(y) => move({ y })}
        />
      </div>
      <PostHere id={`post:${id}`} />
      <RoughFix id={id} />
      <MarkSurvey id={id} />
      <SightKeys key={id} id={id} />
      <MarkKeys id={id} />
    </section>
  );
};
