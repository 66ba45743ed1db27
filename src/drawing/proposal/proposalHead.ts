import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import { rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { moveAtoms } from '../moveAtoms.ts';
import { pens } from '../pens.ts';
import { printable } from '../printable.ts';
import { shorten } from '../shorten.ts';
import { brand } from '../sheet/brand.ts';
import type { Block } from '../sheet/flow/block.ts';
import { stackBlocks } from '../sheet/flow/stackBlocks.ts';
import { letters, lineSpacing } from '../sheet/letters.ts';
import { lineOfText, sizeToFit } from '../sheet/lineOfText.ts';
import { wrapText } from '../wrapText.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** Widths of the cell with the name of the program and of that with who and when; paper inches. */
const cells = { brand: 1.2, who: 2.2 } as const;
/** Clear inside a cell, and from a word to what it says. */
const pad = 0.1;
const wordRoom = 0.72;
/** A block of a heading is no lower than its brand. */
const leastHeight = 0.95;

interface Look {
  readonly width: number;
  readonly size: number;
  readonly weight: 'regular' | 'bold';
  /** What does not fit so many lines is cut. */
  readonly most: number;
}

/** A text in so many lines at most; the last is cut where there would be more. */
const fewLines = (text: string, look: Look): string[] => {
  const lines = wrapText(text.replace(/\s+/g, ' '), look);
  if (lines.length <= look.most) return lines;
  const rest = lines.slice(look.most - 1).join(' ');
  const { width, size, weight } = look;
  return [...lines.slice(0, look.most - 1), shorten(printable(rest), width, size, weight)];
};

const linesBlock = (text: string, look: Look): Block => {
  const line = look.size * lineSpacing;
  const lines = fewLines(text, look);
  const { size, weight } = look;
  return {
    height: lines.length * line,
    atoms: lines.flatMap((own, n) => lineOfText(own, 0, (n + 0.5) * line, { size, weight })),
  };
};

/** What it is in grey with what it says beside it, in two lines at most; one line where it says nothing. */
const row = (word: string, says: string, width: number): Block => {
  const line = letters.body * lineSpacing;
  const look = { width: width - wordRoom, size: letters.body, weight: 'regular', most: 2 } as const;
  const block = linesBlock(says, look);
  return {
    height: Math.max(line, block.height),
    atoms: [
      ...lineOfText(word, 0, line / 2, { size: letters.small, ink: 'dimension' }),
      ...moveAtoms(block.atoms, wordRoom, 0),
    ],
  };
};

const jobCell = ({ job }: Pick<Site, 'job'>, width: number): Block => {
  const name = job.name.trim() === '' ? phrase`Job without a name` : job.name;
  const sizes = [letters.strong, letters.heading, letters.title];
  const size = sizeToFit(name, width, sizes, 'bold');
  return stackBlocks([
    linesBlock(name, { width, size, weight: 'bold', most: 3 }),
    { height: 0.05, atoms: [] },
    row(phrase`For`, job.customer, width),
    row(phrase`At`, job.place, width),
  ]);
};

const whoCell = ({ job }: Pick<Site, 'job'>, check: string, width: number): Block =>
  stackBlocks([
    row(phrase`Date`, job.date, width),
    row(phrase`Drawn by`, job.drawnBy, width),
    ...(job.revision.trim() === '' ? [] : [row(phrase`Revision`, job.revision, width)]),
    row(phrase`Check`, check, width),
  ]);

/**
 * The heading of a proposal, in a frame: job, customer and place, who drew it and when, and the check value
 * of the site. Names that are too long for a line go on in the next; what takes more than a few is cut.
 */
export const proposalHead = (site: Pick<Site, 'job'>, check: string, width: number): Block => {
  const [jobX, whoX] = [cells.brand, width - cells.who];
  const job = jobCell(site, whoX - jobX - 2 * pad);
  const who = whoCell(site, check, cells.who - 2 * pad);
  const height = Math.max(leastHeight, job.height + 2 * pad, who.height + 2 * pad);
  const upright = (x: number) =>
    [
      { x, y: 0 },
      { x, y: height },
    ] as const;
  const lines: Atom[] = [
    { do: 'stroke', pen: pens.frame, outline: rectangleOutline({ x: 0, y: 0 }, width, height) },
    { do: 'stroke', pen: pens.thin, outline: segmentsOutline([upright(jobX), upright(whoX)]) },
  ];
  return {
    height,
    atoms: [
      ...lines,
      ...brand({ x: 0, y: 0, width, height }, phraseOf('brand')`proposal`),
      ...moveAtoms(job.atoms, jobX + pad, pad),
      ...moveAtoms(who.atoms, whoX + pad, pad),
    ],
  };
};
