import { hits } from '../../../src/editor/hit.ts';
import { layOutFrom } from '../../../src/engine/layOutFrom.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import type { Post } from '../../../src/engine/post.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { inches } from '../../../src/units/inches.ts';
import { measured, quantile } from '../measured.ts';
import type { Figure, Pace, Row } from '../row.ts';
import { yardOf } from '../yardOf.ts';

const posts = 20_000;
/** How far from a thing a hand still means it, inches: a finger's width of a yard that is seen at 1:100. */
const reach = inches(40);

/** Touches beside one post after another, all over the yard. */
const touchesOf = (all: readonly Post[]) => {
  let step = 0;
  return () => {
    step += 1;
    const { x = 0, y = 0 } = all[(step * 7919) % all.length]?.at ?? {};
    return { at: { x: x + 3, y: y + 2 }, reach };
  };
};

/** The posts within reach by asking every one of them, the nearest first. */
const scanned = (all: readonly Post[], { at }: ReturnType<ReturnType<typeof touchesOf>>) => {
  const found: { readonly id: Post['id']; readonly away: number }[] = [];
  for (const post of all) {
    const away = distance(at, post.at);
    if (away <= reach) found.push({ id: post.id, away });
  }
  return found.sort((a, b) => a.away - b.away);
};

/** Milliseconds of a first touch after an edit, when what the edit changed is indexed anew. */
const afterEdits = (rounds: number): number => {
  const site = yardOf(posts);
  let laying = layOutFrom(site, null);
  const next = touchesOf([...laying.layout.posts.values()]);
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const offset = inches(400 + (round % 50));
    const edited = moveGate(site, 'gate:long-6', { from: 'start', offset });
    laying = layOutFrom(edited, laying);
    const begun = performance.now();
    hits(edited, laying.layout, next());
    times.push(performance.now() - begun);
  }
  return quantile(times, 0.5);
};

const run = ({ quick }: Pace): Figure => {
  const site = yardOf(posts);
  const layout: Layout = layOutFrom(site, null).layout;
  const all = [...layout.posts.values()];
  const [ours, theirs] = [touchesOf(all), touchesOf(all)];
  const figure = measured(
    () => hits(site, layout, ours()),
    () => scanned(all, theirs()),
    { rounds: quick ? 10 : 40, warm: 4, calls: { ours: 200, theirs: 50 } },
  );
  const first = afterEdits(quick ? 10 : 30).toFixed(1);
  const note = `${all.length} posts; ours also marks, legs, gates, tapes; the first touch after an edit ${first} ms`;
  return { ...figure, note };
};

/** What a hand meets on a large yard. */
export const touch: Row = {
  work: 'touch among 20,000 posts',
  against: 'a scan of all of them',
  bar: 0.1,
  run: (pace) => Promise.resolve(run(pace)),
};
