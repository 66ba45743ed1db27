import { papers, type Orientation, type PaperName } from '../drawing/sheet/papers.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { valueOf, type Call } from './call.ts';
import { choiceOf } from './choiceOf.ts';
import type { Option } from './option.ts';

/** What pages are written as: the file, its kind, the paper, which way it lies. */
export interface PageOrder {
  readonly out: string;
  readonly ending: 'pdf' | 'svg';
  readonly paper: PaperName;
  readonly way: Orientation | null;
}

const paperNames = Object.keys(papers) as PaperName[];

const endingOf = (out: string): Parsed<PageOrder['ending']> => {
  const ending = /[^/\\]\.(pdf|svg)$/i.exec(out)?.[1]?.toLowerCase();
  if (ending === 'pdf' || ending === 'svg') return read(ending);
  return unread(`--out: ${quotedText(out)}: expected a file name that ends in .pdf or .svg`);
};

const ways: readonly Orientation[] = ['portrait', 'landscape'];

/** What a call asks to be written; unread with one line for a file, paper or way that there is not. */
export const pageOrderOf = (call: Call): Parsed<PageOrder> => {
  const out = valueOf(call, 'out') ?? '';
  const ending = endingOf(out);
  if (!ending.ok) return ending;
  const paper = choiceOf(call, 'paper', paperNames);
  if (!paper.ok) return paper;
  const way = choiceOf(call, 'way', ways);
  if (!way.ok) return way;
  return read({
    out,
    ending: ending.value,
    paper: paper.value ?? 'letter',
    way: way.value,
  });
};

const option = { needed: false, repeats: false };

/** The options of verbs that write pages; `usual` says how these lie unless told. */
export const pageOptions = (usual: string): readonly Option[] => [
  { ...option, name: 'out', value: 'FILE.pdf|.svg', needed: true, does: 'the file to write' },
  { ...option, name: 'paper', value: paperNames.join('|'), does: 'the paper; letter unless given' },
  { ...option, name: 'way', value: ways.join('|'), does: `how it lies; ${usual}` },
];
