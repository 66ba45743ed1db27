import { layOutFrom, type Laying } from '../../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { measured } from '../measured.ts';
import type { Figure, Pace, Row } from '../row.ts';
import { cornerOf, yardOf } from '../yardOf.ts';

const posts = 10_000;
const [line, corner] = [6, 20];

const counted = (site: Site): string =>
  `${layOutSite(site).posts.size} posts in ${Object.keys(site.lines).length} lines`;

/** An edit of a yard as it was drawn, another one at every step. */
type Edit = (site: Site, step: number) => Site;

/** A hand that goes on with one yard: every call is the next draft, laid out from the one before. */
const drag = (site: Site, edit: Edit): (() => Laying) => {
  let laying = layOutFrom(site, null);
  let step = 0;
  return () => {
    step += 1;
    laying = layOutFrom(edit(site, step), laying);
    return laying;
  };
};

const byGate: Edit = (site, step) =>
  moveGate(site, `gate:long-${line}`, { from: 'start', offset: inches(400 + (step % 200) / 16) });

const byCorner: Edit = (site, step) => {
  const { x = 0, y = 0 } = site.marks[cornerOf(line, corner)] ?? {};
  return moveMark(site, cornerOf(line, corner), { x: x + (step % 200) / 16, y });
};

const edited = (edit: Edit, { quick }: Pace): Figure => {
  const site = yardOf(posts);
  return measured(drag(site, edit), () => layOutSite(site), {
    rounds: quick ? 6 : 20,
    calls: { ours: 10, theirs: 1 },
    note: counted(site),
  });
};

const full = ({ quick }: Pace): Figure => {
  const site = yardOf(posts);
  const layout = layOutSite(site);
  return measured(
    () => layOutSite(site),
    () => structuredClone(layout),
    { rounds: quick ? 6 : 20, note: counted(site) },
  );
};

/** A layout from nothing, and from the one before after one edit. */
export const layoutRows: readonly Row[] = [
  {
    work: 'full layout, 10,000 posts',
    against: 'structuredClone of its result',
    bar: 1,
    run: (pace) => Promise.resolve(full(pace)),
  },
  {
    work: 'one edit on it: a gate dragged along its leg',
    against: 'full layout',
    bar: 0.02,
    run: (pace) => Promise.resolve(edited(byGate, pace)),
  },
  {
    work: 'one edit on it: a corner moved',
    against: 'full layout',
    bar: 0.02,
    run: (pace) => Promise.resolve(edited(byCorner, pace)),
  },
];
