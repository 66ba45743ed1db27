import { loneMarks, type LoneMark } from '../../engine/walk/loneMarks.ts';
import { isTerminal, standsByGate } from '../../engine/post.ts';
import { formatLength } from '../../units/formatLength.ts';
import { sum } from '../../units/inches.ts';
import { useLayout, useSite } from '../bench.ts';

const many = (count: number, one: string, more: string): string =>
  `${count} ${count === 1 ? one : more}`;

/** How many marks nothing stands on, and how many of them are rough; null for none. */
const marksText = (marks: readonly LoneMark[]): string | null => {
  if (marks.length === 0) return null;
  const rough = marks.filter((lone) => lone.rough).length;
  return `Lone marks: ${marks.length}${rough === 0 ? '' : `, ${rough} by GPS alone`}`;
};

/** What there is in the yard, in one glance. */
export const YardSummary = () => {
  const site = useSite();
  const { lengths, shots } = site;
  const layout = useLayout();
  const lines = Object.values(layout.lines);
  const marks = marksText(loneMarks(site));
  if (lines.length === 0) {
    return (
      <>
        <p className="note">No fence is drawn yet.</p>
        {marks !== null && <p className="note">{marks}</p>}
      </>
    );
  }
  const posts = Object.values(layout.posts);
  const terminals = posts.filter(isTerminal).length;
  const stands = posts.filter(standsByGate).length;
  return (
    <ul className="plain">
      <li>
        <b>{formatLength(sum(lines.map(({ length }) => length)), lengths)}</b> of fence in{' '}
        {many(lines.length, 'line', 'lines')}
      </li>
      <li>
        {many(terminals, 'terminal post', 'terminal posts')},{' '}
        {many(posts.length - terminals - stands, 'line post', 'line posts')}
        {stands === 0 ? '' : `, ${many(stands, 'other post', 'other posts')} for gates`}
      </li>
      <li>{many(Object.keys(layout.gates).length, 'gate', 'gates')}</li>
      {marks !== null && <li>{marks}</li>}
      {Object.keys(shots).length > 0 && (
        <li>{many(Object.keys(shots).length, 'grade shot', 'grade shots')}</li>
      )}
    </ul>
  );
};
