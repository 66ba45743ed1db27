import type { Opening, Term } from '../../engine/opening.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { hatchLines } from '../explode/hatchLines.ts';
import { labelAt, type LabelStyle } from '../lettering/label.ts';
import { shorten } from '../shorten.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** Where the parts stand, paper inches from the top of the bar. */
export const partLevels = { name: 0.08, top: 0.2, bottom: 0.52, size: 0.66, end: 0.76 } as const;

const { top, bottom } = partLevels;
const high = bottom - top;

/** Width of a post, and of a part that would hardly show at the leaf's scale; paper inches. */
const postWidth = 0.16;
const smallPart = 0.95;

interface Part {
  readonly term: Term;
  readonly x: number;
  readonly width: number;
}

/** Leaves, and a gap that nothing closes, are what is wide in an opening. */
const isWide = ({ role }: Term): boolean => role === 'leaf' || role === 'gap';

/** The tail of a leaf that rolls is behind its post: the opening lacks it. */
const isTail = ({ role }: Term): boolean => role === 'overlap';

/** What stands in an opening from left to right, and the left edges of its two posts. */
interface Row {
  readonly parts: readonly Part[];
  readonly posts: readonly [number, number];
}

/** Each term's room: hinges and latch stretched to be seen, the leaves sharing what is left. */
const rowOf = ({ terms }: Opening, width: number): Row => {
  const inner = width - 2 * postWidth;
  const small = terms.filter((term) => !isWide(term)).length;
  const leaves = terms.reduce((so, term) => so + (isWide(term) ? term.planned : 0), 0);
  const each = Math.min(smallPart, inner / Math.max(1, terms.length));
  const rest = inner - each * small;
  const left = terms.findIndex((term) => !isTail(term));
  const right = terms.findLastIndex((term) => !isTail(term));
  const posts: [number, number] = [0, width - postWidth];
  let x = 0;
  const parts = terms.map((term, n) => {
    if (n === left) {
      posts[0] = x;
      x += postWidth;
    }
    const own = isWide(term) && leaves > 0 ? (rest * term.planned) / leaves : each;
    const part = { term, x, width: own };
    x += own;
    if (n === right) {
      posts[1] = x;
      x += postWidth;
    }
    return part;
  });
  return { parts, posts };
};

const words: Readonly<Record<Term['role'], string>> = {
  leaf: phrase`leaf`,
  hinge: phrase`hinge`,
  latch: phrase`gap`,
  stop: phraseOf('post')`stop`,
  overlap: phrase`overlap`,
  gap: phrase`clear`,
};

const leafAtoms = (x: number, width: number): Atom[] => {
  const frame = rectangleOutline({ x, y: top }, width, high);
  const around = [
    { x, y: top },
    { x: x + width, y: bottom },
  ];
  const mesh: Atom = {
    do: 'stroke',
    pen: { ink: 'faint', width: 0.004, dash: [] },
    outline: hatchLines(around, 'cross', null),
  };
  return [
    { do: 'clip', outline: frame, atoms: [mesh] },
    { do: 'stroke', pen: { ink: 'leaf', width: 0.03, dash: [] }, outline: frame },
  ];
};

const hingeAtoms = (x: number, width: number): Atom[] => [
  {
    do: 'fill',
    ink: 'gate',
    opacity: 0.14,
    outline: rectangleOutline({ x, y: top }, width, high),
  },
  ...[0.28, 0.72].map((share): Atom => {
    const y = top + high * share;
    return {
      do: 'stroke',
      pen: { ink: 'gate', width: 0.018, dash: [] },
      outline: [
        ...segmentsOutline([
          [
            { x, y },
            { x: x + width, y },
          ],
        ]),
        ...circleOutline({ x: x + width / 2, y }, 0.035),
      ],
    };
  }),
];

/** The gap stays white, with the bolt that spans it. */
const gapAtoms = (x: number, width: number): Atom[] => [
  {
    do: 'stroke',
    pen: { ink: 'line', width: 0.026, dash: [] },
    outline: segmentsOutline([
      [
        { x: x + width * 0.12, y: (top + bottom) / 2 },
        { x: x + width * 0.88, y: (top + bottom) / 2 },
      ],
    ]),
  },
];

const stopAtoms = (x: number, width: number): Atom[] => [
  {
    do: 'fill',
    ink: 'gate',
    opacity: 1,
    outline: rectangleOutline({ x: x + width / 4, y: top }, width / 2, high),
  },
];

/** The tail of a leaf that rolls, behind its first roller post: of its frame, and without mesh. */
const overlapAtoms = (x: number, width: number): Atom[] => [
  {
    do: 'stroke',
    pen: { ink: 'leaf', width: 0.018, dash: [0.05, 0.03] },
    outline: rectangleOutline({ x, y: top }, width, high),
  },
];

/** A gap that nothing closes: an arrow from post to post. */
const clearAtoms = (x: number, width: number): Atom[] => {
  const y = (top + bottom) / 2;
  const tip = (at: number, side: 1 | -1) =>
    [
      [
        { x: at, y },
        { x: at + side * 0.08, y: y - 0.04 },
      ],
      [
        { x: at, y },
        { x: at + side * 0.08, y: y + 0.04 },
      ],
    ] as const;
  const shaft = [
    { x: x + 0.04, y },
    { x: x + width - 0.04, y },
  ] as const;
  return [
    {
      do: 'stroke',
      pen: { ink: 'dimension', width: 0.01, dash: [] },
      outline: segmentsOutline([shaft, ...tip(x + 0.04, 1), ...tip(x + width - 0.04, -1)]),
    },
  ];
};

const pictures: Readonly<Record<Term['role'], (x: number, width: number) => Atom[]>> = {
  leaf: leafAtoms,
  hinge: hingeAtoms,
  latch: gapAtoms,
  stop: stopAtoms,
  overlap: overlapAtoms,
  gap: clearAtoms,
};

const picture = ({ term, x, width }: Part): Atom[] => pictures[term.role](x, width);

/** What a part is called over the bar: of a leaf that rolls the whole, and the two of its tail. */
const wordOf = (term: Term, { terms }: Opening): string => {
  if (term.role === 'leaf' && terms.some(isTail)) return phrase`whole leaf`;
  // what stays behind the first roller is the outer end of what is added up
  const isOuter = term === terms.at(0) || term === terms.at(-1);
  return isTail(term) && isOuter ? phrase`balance` : words[term.role];
};

const caption = (part: Part, look: LabelStyle, y: number): readonly Atom[] => {
  const text = shorten(look.text, part.width - 0.05, look.size, look.weight);
  return labelAt({ ...look, text }, { x: part.x + part.width / 2, y }, radians(0)).texts;
};

const captions = (part: Part, opening: Opening, style: LengthStyle): readonly Atom[] => {
  const small = { size: 0.141, ink: 'dimension' } as const;
  // a tail is taken off its leaf in the sum; as a piece of the leaf it is as long as it is
  const size = formatLength(inches(Math.abs(part.term.planned)), style);
  return [
    ...caption(
      part,
      { ...small, text: wordOf(part.term, opening), weight: 'regular' },
      partLevels.name,
    ),
    ...caption(part, { ...small, text: size, ink: 'text', weight: 'bold' }, partLevels.size),
  ];
};

/**
 * What stands in an opening from post to post: hinge, leaf, gap, leaf, hinge, each with its planned
 * size. The tail of a leaf that rolls is drawn behind its post. Not to one scale: what takes up
 * little is stretched so that it can be seen.
 */
export const openingParts = (opening: Opening, width: number, style: LengthStyle): Atom[] => {
  const { parts, posts: edges } = rowOf(opening, width);
  const posts = edges.map((x): Atom => {
    const outline = rectangleOutline({ x, y: top - 0.05 }, postWidth, high + 0.1);
    return { do: 'fill', ink: 'post', opacity: 1, outline };
  });
  return [
    ...parts.flatMap(picture),
    ...posts,
    ...parts.flatMap((part) => captions(part, opening, style)),
  ];
};
