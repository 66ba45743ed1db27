import { loneMarks, type LoneMark } from '../../engine/walk/loneMarks.ts';
import { isTerminal, standsByGate } from '../../engine/post.ts';
import { joined, phrase } from '../../phrases/phrase.ts';
import { formatLength } from '../../units/formatLength.ts';
import { sum } from '../../units/inches.ts';
import { useLayout, useSite } from '../bench.ts';
import { spot, withElements } from '../withElements.tsx';

/** How many marks nothing stands on, and how many of them are rough; null for none. */
const marksText = (marks: readonly LoneMark[]): string | null => {
  if (marks.length === 0) return null;
  const rough = marks.filter((lone) => lone.rough).length;
  return rough === 0
    ? phrase`Lone marks: ${marks.length}`
    : phrase`Lone marks: ${marks.length}, ${rough} by GPS alone`;
};

const fenceText = (far: string, lines: number): string =>
  lines === 1 ? phrase`${far} of fence in 1 line` : phrase`${far} of fence in ${lines} lines`;

const postsText = (terminals: number, inLine: number, stands: number): string =>
  joined(
    [
      terminals === 1 ? phrase`1 terminal post` : phrase`${terminals} terminal posts`,
      inLine === 1 ? phrase`1 line post` : phrase`${inLine} line posts`,
      ...(stands === 0
        ? []
        : [
            stands === 1 ? phrase`1 other post for gates` : phrase`${stands} other posts for gates`,
          ]),
    ],
    ', ',
  );

const gatesText = (gates: number): string =>
  gates === 1 ? phrase`1 gate` : phrase`${gates} gates`;

const shotsText = (shots: number): string =>
  shots === 1 ? phrase`1 grade shot` : phrase`${shots} grade shots`;

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
        <p className="note">{phrase`No fence is drawn yet.`}</p>
        {marks !== null && <p className="note">{marks}</p>}
      </>
    );
  }
  const posts = [...layout.posts.values()];
  const terminals = posts.filter(isTerminal).length;
  const stands = posts.filter(standsByGate).length;
  const far = formatLength(sum(lines.map(({ length }) => length)), lengths);
  return (
    <ul className="plain">
      <li>{withElements(fenceText(spot(0), lines.length), [<b key="far">{far}</b>])}</li>
      <li>{postsText(terminals, posts.length - terminals - stands, stands)}</li>
      <li>{gatesText(Object.keys(layout.gates).length)}</li>
      {marks !== null && <li>{marks}</li>}
      {Object.keys(shots).length > 0 && <li>{shotsText(Object.keys(shots).length)}</li>}
    </ul>
  );
};
