import { gateName, lineName } from '../engine/checks/names.ts';
import { tapeReadings, type TapeReadings } from '../engine/posts/tapeReadings.ts';
import type { GateLayout, Layout, LineLayout, Run, Space } from '../engine/layout.ts';
import { isTerminal, standsByGate, type Post } from '../engine/post.ts';
import { writer } from '../engine/set/setCase.ts';
import { setOf } from '../engine/set/setOf.ts';
import { runName } from '../drawing/plan/runName.ts';
import { shortStyle } from '../drawing/tables/shortStyle.ts';
import { curveTables } from '../drawing/tables/curveTables.ts';
import { slopeTexts } from '../drawing/tables/slopeTexts.ts';
import { standRows } from '../drawing/tables/standRows.ts';
import type { Site } from '../site/site.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Inches } from '../units/inches.ts';
import { columns } from './columns.ts';
import { openingLines } from './openingLines.ts';
import { phrase, phraseOf } from '../phrases/phrase.ts';
import { offBy, verdictWords } from './verdictWords.ts';

/** A site and all that follows from it. */
export interface LaidSite {
  readonly site: Site;
  readonly layout: Layout;
}

const heading = [
  phraseOf('column')`run`,
  '',
  phraseOf('column')`tape`,
  phraseOf('column')`post`,
  phraseOf('column')`kind`,
  phraseOf('column')`to next`,
  '',
  phraseOf('column')`hole`,
  phraseOf('column')`cut`,
  phraseOf('column')`pipe`,
];

/** A post by its kind, in a word. */
const kinds: Readonly<Record<Post['kind'], string>> = {
  end: phraseOf('post')`end`,
  wall: phraseOf('post')`wall`,
  corner: phraseOf('post')`corner`,
  junction: phraseOf('post')`junction`,
  gate: phraseOf('post')`gate`,
  bend: phraseOf('post')`bend`,
  line: phraseOf('post')`line`,
  pull: phraseOf('post')`pull`,
  roller: phraseOf('post')`roller`,
  'hold-open': phraseOf('post')`hold-open`,
  stop: phraseOf('post')`stop`,
};

const counted = {
  leg: (count: number) => (count === 1 ? phrase`1 leg` : phrase`${count} legs`),
  run: (count: number) => (count === 1 ? phrase`1 run` : phrase`${count} runs`),
  terminal: (count: number) =>
    count === 1 ? phrase`1 terminal post` : phrase`${count} terminal posts`,
  line: (count: number) => (count === 1 ? phrase`1 line post` : phrase`${count} line posts`),
  stand: (count: number) =>
    count === 1 ? phrase`1 other post for gates` : phrase`${count} other posts for gates`,
  gate: (count: number) => (count === 1 ? phrase`1 gate` : phrase`${count} gates`),
} as const;

/** What a reader walking from the hook meets after a post. */
const nextCells = (space: Space | undefined, site: Site, length: string): string[] => {
  if (space === undefined) return ['', ''];
  return [length, space.kind === 'bay' ? phrase`bay` : gateName(site, space.gate)];
};

const holeCell = ({ hole, wall }: Post, { lengths }: Site): string => {
  const sizes = [hole.diameter, hole.depth].map((size) => formatLength(size, shortStyle(lengths)));
  if (wall === null) return sizes.join(' × ');
  return wall.set.kind === 'cored'
    ? phrase`core ${sizes.join(' × ')}`
    : phrase`plate ${sizes[0] ?? ''}`;
};

const postCells = (post: Post, site: Site): string[] => [
  holeCell(post, site),
  formatLength(post.length, shortStyle(site.lengths)),
  post.pipe,
];

const runRows = (run: Run, tape: TapeReadings, { site, layout }: LaidSite): string[][] => {
  const write = (length: Inches): string => formatLength(length, site.lengths);
  const turned = run.posts[0]?.post !== tape.posts[0]?.post;
  const spaces = turned ? run.spaces.toReversed() : run.spaces;
  return tape.posts.flatMap(({ post: id, reading }, n) => {
    const post = layout.posts.get(id);
    if (post === undefined) return [];
    const next = tape.spaces[n];
    return [
      [
        ...(n === 0 ? [runName(run, layout), write(run.length)] : ['', '']),
        write(reading),
        post.tag,
        kinds[post.kind],
        ...nextCells(spaces[n], site, next === undefined ? '' : write(next)),
        ...postCells(post, site),
      ],
    ];
  });
};

/** What stands for the gates of a line and is on no run, by the tape of the run it stands at. */
const standLines = (line: LineLayout, { site, layout }: LaidSite): string[] => {
  const rows = standRows(line, layout, site).map(
    ([run = '', , tag = '', what = '', reads = '', , , , hole = '', , cut = '']) => [
      run,
      reads,
      tag || '-',
      hole,
      cut,
      what,
    ],
  );
  if (rows.length === 0) return [];
  const head = [
    phraseOf('column')`run`,
    phraseOf('column')`tape`,
    phraseOf('column')`post`,
    phraseOf('column')`hole`,
    phraseOf('column')`cut`,
    phraseOf('column')`what stands for its gates`,
  ];
  return ['', ...columns([head, ...rows], ['left', 'right', 'left', 'left', 'right'])];
};

/** How a line lies on slopes and curves. */
const groundLines = (line: LineLayout, { site, layout }: LaidSite): string[] => {
  const texts = [
    ...slopeTexts(line, layout, site),
    ...curveTables(line, layout, site).map(({ text }) => text),
  ];
  return texts.length === 0 ? [] : ['', ...texts];
};

const lineLines = (line: LineLayout, laid: LaidSite): string[] => {
  const { site } = laid;
  const hook = site.lines[line.id]?.hook ?? 'start';
  const [name, long] = [lineName(site, line.id), formatLength(line.length, site.lengths)];
  const [legs, runs] = [counted.leg(line.legs.length), counted.run(line.runs.length)];
  const title =
    hook === 'start'
      ? phrase`${name}: ${long}, ${legs}, ${runs}, tape hooked at the start of each run`
      : phrase`${name}: ${long}, ${legs}, ${runs}, tape hooked at the end of each run`;
  const rows = line.runs.flatMap((run) =>
    runRows(run, tapeReadings(run, hook, site.lengths), laid),
  );
  const sides = ['left', 'right', 'right', 'left', 'left', 'right'] as const;
  return [
    '',
    title,
    ...columns(rows.length === 0 ? [] : [heading, ...rows], sides),
    ...standLines(line, laid),
    ...groundLines(line, laid),
  ];
};

const setAt: Readonly<Record<'top' | 'bottom', string>> = {
  top: phrase`set at the top`,
  bottom: phrase`set at the bottom`,
};

/** What comes of the posts that were set, and what helps; none for a gate that was not set. */
const setLines = ({ id }: GateLayout, site: Site): string[] => {
  const gate = site.gates[id];
  const set = gate === undefined ? null : setOf(site, gate);
  if (set === null) return [];
  const write = writer({ site });
  const rows = set.widths.map(({ at, width, gap: { verdict, by, planned } }) => [
    setAt[at],
    write(width),
    by > 0 ? offBy(verdict, write(by)) : verdictWords[verdict],
    phrase`leaves ${write(planned)} for the latch`,
  ]);
  const remedies = set.remedies.map(({ what, enough }) =>
    enough ? `- ${what}` : `- ${phrase`${what} Not enough by itself.`}`,
  );
  return [...columns(rows, ['left', 'right']), ...remedies].map((line) => `  ${line}`);
};

const gateLines = (gate: GateLayout, { site, layout }: LaidSite): string[] => {
  const tag = (id: string): string => layout.posts.get(id as Post['id'])?.tag ?? '?';
  const where =
    gate.posts === null
      ? phrase`not placed`
      : phrase`between ${tag(gate.posts.start)} and ${tag(gate.posts.end)}`;
  const lines = openingLines(gate.opening, shortStyle(site.lengths)).map((line) => `  ${line}`);
  return ['', `${gateName(site, gate.id)}, ${where}`, ...lines, ...setLines(gate, site)];
};

const summary = ({ posts, gates }: Layout): string => {
  const all = [...posts.values()];
  const terminals = all.filter(isTerminal).length;
  const stands = all.filter(standsByGate).length;
  return [
    counted.terminal(terminals),
    counted.line(all.length - terminals - stands),
    ...(stands === 0 ? [] : [counted.stand(stands)]),
    counted.gate(Object.keys(gates).length),
  ].join(', ');
};

/**
 * A layout as aligned text: for every fence line its runs from the hook on, post by post, what
 * stands besides for its gates, then every opening with its working. Lengths in the site's own style.
 */
export const layoutLines = (laid: LaidSite): string[] => [
  laid.site.job.name || phrase`Site without a name`,
  summary(laid.layout),
  ...Object.values(laid.layout.lines).flatMap((line) => lineLines(line, laid)),
  ...Object.values(laid.layout.gates).flatMap((gate) => gateLines(gate, laid)),
];
