import type { Layout } from '../../engine/layout.ts';
import type { FootingRow } from '../../engine/structure/footing.ts';
import { footingRules } from '../../engine/structure/footingRules.ts';
import { deepest } from '../../engine/structure/poleFooting.ts';
import { postStructures, type PostStructure } from '../../engine/structure/postStructures.ts';
import type { Site } from '../../site/site.ts';
import { openFrameSource } from '../../trade/openFrames.ts';
import { bendingSource, windSource } from '../../trade/windTerms.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`Posts of`, align: 'left', share: 0.5 },
  { heading: phrase`Planned`, align: 'left', share: 0 },
  { heading: phrase`Compared with`, align: 'left', share: 1 },
  { heading: phrase`By`, align: 'left', share: 0.8 },
];

type Say = (length: Inches) => string;

/** How lengths are written, and thin ones. */
interface Writes {
  readonly say: Say;
  readonly fine: Say;
}

const uses: Readonly<Record<PostStructure['use'], string>> = {
  'gate post': phrase`gate post`,
  'terminal post': phrase`terminal post`,
  'line post': phrase`line post`,
};

const bent = (inchPounds: number): string => phrase`${Math.round(inchPounds / 12)} ft-lb`;

const windRow = ({ use, wide, wind, pipe }: PostStructure, { say, fine }: Writes): string[][] => {
  if (wind === null) return [];
  const planned = use === 'line post' ? phrase`bays to ${say(wide)}` : phrase`holds ${say(wide)}`;
  if (wind === 'too solid') {
    return [[planned, phrase`wind: more solid than open frames go`, openFrameSource.text]];
  }
  if (wind === 'square') {
    return [
      [planned, phrase`wind: square posts are not compared`, phrase`for a licensed professional`],
    ];
  }
  const { nameWith, solidity, push, bends, capacity, longest, steel } = wind;
  const most =
    use === 'line post' ? phrase`bays to ${say(longest)}` : phrase`${say(longest)} at most`;
  return [
    [
      planned,
      phrase`${nameWith(fine)}, ${(100 * solidity).toFixed(0)} % solid: ${Math.round(push.pounds)} lb at ${say(push.height)}, ${bent(bends)} of ${bent(capacity)} that ${pipe.label} of ${steel} steel may bear; ${most}`,
      `${windSource.text}; ${openFrameSource.text}; ${bendingSource.text}`,
    ],
  ];
};

const askedText = ({ depth }: FootingRow, say: Say): string =>
  depth === null ? phrase`more than ${say(deepest)} deep` : phrase`${say(depth)} deep`;

const ruleRows = ({ footing, post, lateral }: PostStructure, say: Say): string[][] =>
  footing.rows.map((row) => [
    phrase`hole ${say(post.hole.depth)} deep`,
    `${footingRules[row.rule]}${row.trials.length > 0 ? phrase` in ${lateral} psf a foot` : ''}: ${askedText(row, say)}`,
    row.source,
  ]);

const rowsOf = (label: string, one: PostStructure, writes: Writes): string[][] =>
  [...windRow(one, writes), ...ruleRows(one, writes.say)].map((row, n) => [
    n === 0 ? `${label}: ${uses[one.use]} ${one.post.tag}` : '',
    ...row,
  ]);

/**
 * What wind, frost and ground ask of the posts of each build beside what is planned, of every use the post
 * that holds the most fence; no rows where nobody has told of any of it.
 */
export const structureTable = (
  site: Site,
  layout: Pick<Layout, 'lines' | 'posts' | 'gates'>,
): Table => {
  const writes: Writes = {
    say: (length) => formatLength(length, site.lengths),
    fine: (length) => formatLength(length, fineStyle(site.lengths)),
  };
  const rows = [...postStructures(site, layout)].flatMap(([id, posts]) =>
    posts.flatMap((one) => rowsOf(site.specs[id]?.label ?? '', one, writes)),
  );
  return { title: phrase`Posts, compared`, columns, rows };
};
