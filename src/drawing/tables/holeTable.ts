import type { Layout, LineLayout, Run, Space } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import { tapeReadings } from '../../engine/posts/tapeReadings.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { openingText } from '../opening/openingText.ts';
import { runName } from '../plan/runName.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { postWord } from './postWord.ts';
import { shortStyle } from './shortStyle.ts';
import { standRows } from './standRows.ts';
import type { Column, Table } from './table.ts';

const columns: readonly Column[] = [
  { heading: 'Run', align: 'left', share: 1 },
  { heading: 'Post', align: 'left', share: 1 },
  { heading: 'What', align: 'left', share: 2 },
  { heading: 'Tape reads', align: 'right', share: 1 },
  { heading: 'From the last', align: 'right', share: 1 },
  { heading: 'Post OD', align: 'right', share: 1 },
  { heading: 'Hole, dia × deep', align: 'right', share: 1 },
  { heading: 'Above ground', align: 'right', share: 1 },
  { heading: 'Post length', align: 'right', share: 1 },
];

/** The opening that a post is set by, where the space before it is a gate. */
const hold = (before: Space | undefined, { gates }: Layout, style: LengthStyle): string => {
  const gate = before?.kind === 'gate' ? gates[before.gate] : undefined;
  return gate === undefined ? '' : `, hold ${openingText(gate.opening.target, style)}`;
};

const hole = ({ hole: { diameter, depth }, wall }: Post, site: Site): string => {
  const [wide, deep] = [diameter, depth].map((size) =>
    formatLength(size, shortStyle(site.lengths)),
  );
  if (wall === null) return `${wide} × ${deep}`;
  return wall.set.kind === 'cored' ? `core ${wide} × ${deep}` : `plate ${wide} square`;
};

const spaceText = (space: Space | undefined, length: Inches, site: Site): string => {
  const text = formatLength(length, site.lengths);
  return space?.kind === 'gate' ? `gate ${text}` : text;
};

const rowsOf = (run: Run, layout: Layout, site: Site): string[][] => {
  const hook = site.lines[run.line]?.hook ?? 'start';
  const style = site.lengths;
  const { posts, spaces, lead, tail, total } = tapeReadings(run, hook, style);
  const between = hook === 'start' ? run.spaces : run.spaces.toReversed();
  const name = runName(run, layout);
  const bare = (says: string, reading: Inches, from: string): string[] => [
    name,
    '',
    says,
    formatLength(reading, style),
    from,
    '',
    '',
    '',
    '',
  ];
  const rows = posts.flatMap(({ post: id, reading }, n): string[][] => {
    const post = layout.posts[id];
    if (post === undefined) return [];
    const before = n === 0 ? lead : spaces[n - 1];
    const from = n === 0 && lead === 0 ? 'hook' : spaceText(between[n - 1], before ?? lead, site);
    return [
      [
        name,
        post.tag,
        `${postWord(post)}${hold(between[n - 1], layout, style)}`,
        formatLength(reading, style),
        from,
        pipeSize(post.od, style),
        hole(post, site),
        formatLength(post.above, shortStyle(style)),
        formatLength(post.length, shortStyle(style)),
      ],
    ];
  });
  return [
    ...(lead === 0 ? [] : [bare('hook at the mark', inches(0), 'hook')]),
    ...rows,
    ...(tail === 0 ? [] : [bare('mark at the end', total, formatLength(tail, style))]),
  ];
};

/**
 * Every hole of a fence line, run by run from the end at which the tape is hooked: what the tape
 * reads, how far from the post before, and what goes into the ground. A post at which two runs
 * meet is read from both. What stands beside the fence for its gates comes last.
 */
export const holeTable = (line: LineLayout, layout: Layout, site: Site): Table => ({
  title: `Holes of ${site.lines[line.id]?.label.trim() || 'the fence line'}`,
  columns,
  rows: [
    ...line.runs.flatMap((run) => rowsOf(run, layout, site)),
    ...standRows(line, layout, site),
  ],
});
