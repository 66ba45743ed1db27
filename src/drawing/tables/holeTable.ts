import type { Layout, LineLayout, Run, Space } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import { tapeReadings, type TapeReadings } from '../../engine/posts/tapeReadings.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { hookTag } from './hookTag.ts';
import { openingText } from '../opening/openingText.ts';
import { isHeld } from '../plan/drawPins.ts';
import { runName } from '../plan/runName.ts';
import { gateTitle } from './gateKind.ts';
import { postWord } from './postWord.ts';
import { shortStyle } from './shortStyle.ts';
import { standRows } from './standRows.ts';
import { stretchNames } from './stretchNames.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`Run`, align: 'left', share: 1, is: 'run' },
  { heading: phrase`Stretch`, align: 'left', share: 1, is: 'stretch' },
  { heading: phrase`Post`, align: 'left', share: 1 },
  { heading: phrase`What`, align: 'left', share: 2 },
  { heading: phrase`Tape reads`, align: 'right', share: 1 },
  { heading: phrase`From the other end`, align: 'right', share: 1 },
  { heading: phrase`From the last`, align: 'right', share: 1 },
  { heading: phrase`Post OD`, align: 'right', share: 1 },
  { heading: phrase`Hole, dia × deep`, align: 'right', share: 1 },
  { heading: phrase`Above ground`, align: 'right', share: 1, is: 'above ground' },
  { heading: phrase`Post length`, align: 'right', share: 1 },
];

/** A run as it is listed: its tape, and what lies before each of its posts as the tape goes. */
interface Listed {
  readonly run: Run;
  readonly name: string;
  readonly tape: TapeReadings;
  readonly between: readonly Space[];
  readonly stretch: (space: Space) => string;
  readonly layout: Layout;
  readonly site: Site;
}

/** The opening that a post is set by, where the space before it is a gate. */
const hold = (before: Space | undefined, { gates }: Layout, style: LengthStyle): string => {
  const gate = before?.kind === 'gate' ? gates[before.gate] : undefined;
  return gate === undefined ? '' : phrase`, hold ${openingText(gate.opening.target, style)}`;
};

const hole = ({ hole: { diameter, depth }, wall }: Post, site: Site): string => {
  const write = (size: Inches): string => formatLength(size, shortStyle(site.lengths));
  const [wide, deep] = [write(diameter), write(depth)];
  if (wall === null) return `${wide} × ${deep}`;
  return wall.set.kind === 'cored' ? phrase`core ${wide} × ${deep}` : phrase`plate ${wide} square`;
};

const spaceText = (space: Space | undefined, length: Inches, site: Site): string => {
  const text = formatLength(length, site.lengths);
  return space?.kind === 'gate' ? phrase`gate ${text}` : text;
};

/** The space that a post is listed with: the one before it, of the first post the one after it. */
const spaceOf = ({ between }: Listed, n: number): Space | undefined => between[Math.max(0, n - 1)];

const stretchOf = (listed: Listed, n: number): string => {
  const space = spaceOf(listed, n);
  return space === undefined ? listed.name : listed.stretch(space);
};

const what = (post: Post, before: Space | undefined, { layout, site }: Listed): string =>
  `${postWord(post)}${isHeld(post.id) ? phrase`, held by hand` : ''}${hold(before, layout, site.lengths)}`;

const postRow = (listed: Listed, n: number): string[] | null => {
  const { name, tape, between, layout, site } = listed;
  const { lengths: style } = site;
  const stop = tape.posts[n];
  const post = stop === undefined ? undefined : layout.posts.get(stop.post);
  if (stop === undefined || post === undefined) return null;
  const before = n === 0 ? tape.lead : (tape.spaces[n - 1] ?? tape.lead);
  const from = n === 0 && tape.lead === 0 ? phrase`hook` : spaceText(between[n - 1], before, site);
  return [
    name,
    stretchOf(listed, n),
    post.tag,
    what(post, between[n - 1], listed),
    formatLength(stop.reading, style),
    formatLength(stop.back, style),
    from,
    pipeSize(post.od, style),
    hole(post, site),
    formatLength(post.above, shortStyle(style)),
    formatLength(post.length, shortStyle(style)),
  ];
};

/** The row of a mark at an end of the tape at which no post stands. */
const bareRow = (listed: Listed, says: string, end: 'hook' | 'far'): string[] => {
  const { name, tape, site } = listed;
  const write = (length: Inches): string => formatLength(length, site.lengths);
  const [none, total] = [write(inches(0)), write(tape.total)];
  const stretch = stretchOf(listed, end === 'hook' ? 0 : tape.posts.length - 1);
  const cells = end === 'hook' ? [none, total, phrase`hook`] : [total, none, write(tape.tail)];
  return [name, stretch, '', says, ...cells, '', '', '', ''];
};

const rowsOf = (listed: Listed): string[][] => {
  const { tape } = listed;
  return [
    ...(tape.lead === 0 ? [] : [bareRow(listed, phrase`hook at the mark`, 'hook')]),
    ...tape.posts.flatMap((_, n): string[][] => {
      const row = postRow(listed, n);
      return row === null ? [] : [row];
    }),
    ...(tape.tail === 0 ? [] : [bareRow(listed, phrase`mark at the end`, 'far')]),
  ];
};

/** What stands over the rows of each stretch; over the first of a run also how its tape is hooked. */
const groupsOf = (listed: Listed, rows: readonly string[][]): string[] => {
  const { name, tape, between, stretch, layout, site } = listed;
  const gates = new Map(
    between.flatMap((space) => {
      const gate = space.kind === 'gate' ? layout.gates[space.gate] : undefined;
      return gate === undefined ? [] : [[stretch(space), `, ${gateTitle(gate, site)}`] as const];
    }),
  );
  const at = hookTag(tape, layout);
  const length = formatLength(tape.total, site.lengths);
  const first = rows[0]?.[1] ?? name;
  const on = first === name ? '' : phrase`, on the tape ${name}`;
  return rows.map(([, own = name]) => {
    const gate = gates.get(own) ?? '';
    if (own !== first) return `${own}${gate}`;
    return phrase`${own}${gate}${on}: hooked at ${at}, ${length} in all`;
  });
};

/** A site, its layout, and what the stretches of a line are called in it. */
type Named = Pick<Listed, 'site' | 'layout' | 'stretch'>;

const listedOf = (run: Run, { site, layout, stretch }: Named): Listed => {
  const hook = site.lines[run.line]?.hook ?? 'start';
  return {
    run,
    name: runName(run, layout),
    tape: tapeReadings(run, hook, site.lengths),
    between: hook === 'start' ? run.spaces : run.spaces.toReversed(),
    stretch,
    layout,
    site,
  };
};

/**
 * Every hole of a fence line, run by run from the end at which the tape is hooked and stretch by
 * stretch: what the tape reads from that end and from the other, how far from the post before, and
 * what goes into the ground. A post at which two runs meet is read from both. What stands beside
 * the fence for its gates comes last.
 */
export const holeTable = (line: LineLayout, layout: Layout, site: Site): Table => {
  const named = { site, layout, stretch: stretchNames(line, layout) };
  const runs = line.runs.map((run) => {
    const listed = listedOf(run, named);
    const rows = rowsOf(listed);
    return { rows, groups: groupsOf(listed, rows) };
  });
  const beside = standRows(line, layout, site);
  const label = site.lines[line.id]?.label.trim() ?? '';
  return {
    title: label === '' ? phrase`Holes of the fence line` : phrase`Holes of ${label}`,
    columns,
    rows: [...runs.flatMap(({ rows }) => rows), ...beside],
    groups: [
      ...runs.flatMap(({ groups }) => groups),
      ...beside.map(() => phrase`Beside the fence, for its gates`),
    ],
  };
};
