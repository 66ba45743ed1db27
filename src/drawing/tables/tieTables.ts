import type { Layout } from '../../engine/layout.ts';
import type { PostTie } from '../../engine/ties/postTies.ts';
import type { Reference } from '../../engine/ties/reference.ts';
import type { TieTape, TwoTapes } from '../../engine/ties/twoTapes.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { postWord } from './postWord.ts';
import { shortStyle } from './shortStyle.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';
import { sideWords } from './sideWords.ts';

/** Shifts are told to 1/16 in or to the millimetre, rounded up. */
const shiftStyle = (lengths: LengthStyle): LengthStyle => ({
  ...shortStyle(lengths),
  fraction: 16,
});

/** A short length as it is told of a slip or a shift, never less than it is. */
export const shiftText = (shift: Inches, lengths: LengthStyle): string => {
  const style = shiftStyle(lengths);
  const step = lengthOfSteps(1, style);
  // a millionth of a step is rounding and not one more
  return formatLength(inches(Math.ceil(shift / step - 1e-6) * step), style);
};

const nameOf = ({ name, sketched }: Reference): string =>
  sketched ? phrase`${name} (sketched)` : name;

const tapeColumns: readonly Column[] = [
  { heading: phrase`Post`, align: 'left', share: 0 },
  { heading: phrase`What`, align: 'left', share: 1 },
  { heading: phrase`Tape from`, align: 'left', share: 2 },
  { heading: phrase`reads`, align: 'right', share: 0 },
  { heading: phrase`Tape from`, align: 'left', share: 2 },
  { heading: phrase`reads`, align: 'right', share: 0 },
  { heading: phrase`Lies`, align: 'left', share: 0 },
  { heading: phrase`Shift`, align: 'right', share: 0 },
];

const tapeCells = ({ from, reads }: TieTape, lengths: LengthStyle): string[] => [
  nameOf(from),
  formatLength(reads, lengths),
];

const tapesRow = ({ first, second, side, shift }: TwoTapes, { lengths }: Site): string[] => [
  ...tapeCells(first, lengths),
  ...tapeCells(second, lengths),
  sideWords[side],
  shiftText(shift, lengths),
];

/** The two tapes that every terminal post is found by; a row each, in the order of the posts. */
export const tieTable = (ties: readonly PostTie[], layout: Layout, site: Site): Table => ({
  title: phrase`Two tapes to each terminal post`,
  columns: tapeColumns,
  rows: ties.flatMap(({ post: id, tapes }) => {
    const post = layout.posts.get(id);
    if (post === undefined) return [];
    const own = tapes === null ? [phrase`none`, '', '', '', '', ''] : tapesRow(tapes, site);
    return [[post.tag, postWord(post), ...own]];
  }),
});

const offsetColumns: readonly Column[] = [
  { heading: phrase`Post`, align: 'left', share: 0 },
  { heading: phrase`Check: tape from`, align: 'left', share: 1 },
  { heading: phrase`reads`, align: 'right', share: 0 },
  { heading: phrase`Or along, from`, align: 'left', share: 1 },
  { heading: phrase`along`, align: 'right', share: 0 },
  { heading: phrase`square off`, align: 'right', share: 0 },
  { heading: phrase`Lies`, align: 'left', share: 0 },
];

/** A wall by its two ends; what both names begin with is said once. */
const wallName = (from: Reference, to: Reference): string => {
  const [of, ...rest] = to.name.split(', ');
  const short = rest.length > 0 && from.name.startsWith(`${of}, `) ? rest.join(', ') : to.name;
  return phrase`${nameOf(from)} to ${short}`;
};

/** The third tape as a check, and the offset of every terminal post that has one of them. */
export const tieCheckTable = (ties: readonly PostTie[], layout: Layout, site: Site): Table => {
  const write = (length: Inches): string => formatLength(length, site.lengths);
  return {
    title: phrase`A third tape as a check, and square off a wall or lot line`,
    columns: offsetColumns,
    rows: ties.flatMap(({ post: id, tapes, offset }) => {
      const post = layout.posts.get(id);
      const check = tapes?.check ?? null;
      if (post === undefined || (check === null && offset === null)) return [];
      return [
        [
          post.tag,
          ...(check === null ? [phrase`no third mark`, ''] : tapeCells(check, site.lengths)),
          ...(offset === null
            ? ['', '', '', '']
            : [
                wallName(offset.from, offset.to),
                write(offset.along),
                write(offset.off),
                sideWords[offset.side],
              ]),
        ],
      ];
    }),
  };
};
