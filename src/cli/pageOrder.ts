import { dpiRange } from '../exporters/png/dpiRange.ts';
import { papers, type Orientation, type PaperName } from '../drawing/sheet/papers.ts';
import { readers, type Reader } from '../drawing/sheet/setParts.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { valueOf, type Call } from './call.ts';
import { choiceOf } from './choiceOf.ts';
import { endingIn } from './endingIn.ts';
import type { Option } from './option.ts';
import { readNumber } from './readNumber.ts';
import { phrase } from '../phrases/phrase.ts';

/** What files of pages end in. */
export const pageEndings = ['pdf', 'svg', 'png'] as const;

/**
 * What pages are written as: the file, its kind, the paper, which way it lies, and dots
 * per inch of a PNG.
 */
export interface PageOrder {
  readonly out: string;
  readonly ending: (typeof pageEndings)[number];
  /** Null where none was asked for. */
  readonly paper: PaperName | null;
  readonly way: Orientation | null;
  readonly dpi: number;
  /** Whose set it is; null for the whole one. */
  readonly reader: Reader | null;
}

const paperNames = Object.keys(papers) as PaperName[];

const endingOf = (out: string): Parsed<PageOrder['ending']> => {
  const found = endingIn(out, pageEndings);
  if (found !== null) return read(found);
  return unread(
    phrase`--out: ${quotedText(out)}: expected a file name that ends in .pdf, .svg or .png`,
  );
};

const ways: readonly Orientation[] = ['portrait', 'landscape'];

/** Dots per inch, which only a PNG has. */
const dpiOf = (call: Call, ending: PageOrder['ending']): Parsed<number> => {
  const { least, usual, most } = dpiRange;
  if (ending !== 'png' && valueOf(call, 'dpi') !== null) {
    return unread(phrase`--dpi: only a file that ends in .png has a resolution`);
  }
  const dpi = readNumber(call, 'dpi', { from: least, to: most, unit: 'dpi' });
  if (!dpi.ok) return dpi;
  if (dpi.value === null || Number.isInteger(dpi.value)) return read(dpi.value ?? usual);
  return unread(phrase`--dpi: ${quotedText(String(dpi.value))}: expected a whole number`);
};

/** What a call asks to be written; unread with one line for a file, paper or way that there is not. */
export const pageOrderOf = (call: Call): Parsed<PageOrder> => {
  const out = valueOf(call, 'out') ?? '';
  const ending = endingOf(out);
  if (!ending.ok) return ending;
  const paper = choiceOf(call, 'paper', paperNames);
  if (!paper.ok) return paper;
  const way = choiceOf(call, 'way', ways);
  if (!way.ok) return way;
  const reader = choiceOf(call, 'for', readers);
  if (!reader.ok) return reader;
  const dpi = dpiOf(call, ending.value);
  if (!dpi.ok) return dpi;
  return read({
    out,
    ending: ending.value,
    paper: paper.value,
    way: way.value,
    dpi: dpi.value,
    reader: reader.value,
  });
};

const option = { needed: false, repeats: false };

/** What the options of pages say besides the file; `usual` says how pages lie unless told. */
export const paperOptions = (usual: string): readonly Option[] => [
  {
    ...option,
    name: 'paper',
    value: paperNames.join('|'),
    does: phrase`the paper; letter unless given, a4 for a metric site`,
  },
  { ...option, name: 'way', value: ways.join('|'), does: phrase`how it lies; ${usual}` },
  {
    ...option,
    name: 'dpi',
    value: 'N',
    does: phrase`dots per inch of a PNG, ${dpiRange.least} to ${dpiRange.most}; ${dpiRange.usual} unless given`,
  },
];

/** Whose set of sheets is written. */
export const readerOption: Option = {
  ...option,
  name: 'for',
  value: readers.join('|'),
  does: phrase`whose set of sheets it is; the whole one unless given`,
};

/** The options of verbs that write pages; `usual` says how these lie unless told. */
export const pageOptions = (usual: string): readonly Option[] => [
  {
    ...option,
    name: 'out',
    value: 'FILE.pdf|.svg|.png',
    needed: true,
    does: phrase`the file to write`,
  },
  ...paperOptions(usual),
];
