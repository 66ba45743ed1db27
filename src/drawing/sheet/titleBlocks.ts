import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import { rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';
import { printable } from '../printable.ts';
import { textWidth } from '../textWidth.ts';
import { wrapText } from '../wrapText.ts';
import { brand } from './brand.ts';
import { letters } from './letters.ts';
import { lineOfText, sizeToFit, type LineLook } from './lineOfText.ts';
import type { SheetFrame } from './sheetFrame.ts';
import type { Rect } from './rect.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** What the title blocks of a set say besides the job: how many sheets it has, and its check value. */
export interface SetName {
  readonly of: number;
  readonly check: string;
  /** What the set is, under the name of the program; `crew sheet` unless said. */
  readonly sort?: string;
}

/** What the title block of one sheet says. */
export interface SheetName {
  readonly title: string;
  readonly number: number;
}

const reminder = phrase`Call before you dig. Local codes and the owner of the land come first. Figures approve nothing.`;

/** A row with what it is in grey and what it says after it. */
const row = (word: string, says: string, at: { x: number; y: number; width: number }): Atom[] => {
  const room = 0.72;
  return [
    ...lineOfText(word, at.x, at.y, { size: letters.small, ink: 'dimension' }),
    ...lineOfText(says, at.x + room, at.y, { width: at.width - room }),
  ];
};

const rows = (entries: readonly (readonly [string, string])[], { x, y, width }: Rect): Atom[] =>
  entries.flatMap(([word, says], n) => row(word, says, { x, y: y + 0.16 + n * 0.21, width }));

/** Where the cells of the block begin, as inches from its left and shares of what is left. */
const cells = (title: Rect) => {
  const first = 1.2;
  const rest = title.width - first;
  const cell = (from: number, to: number): Rect => ({
    x: title.x + first + from * rest + 0.1,
    y: title.y,
    width: (to - from) * rest - 0.2,
    height: title.height,
  });
  return { brand: title, job: cell(0, 0.44), who: cell(0.44, 0.72), sheet: cell(0.72, 1) };
};

/** The name of a sheet in as large letters as fit one line, else in two lines of the smallest. */
const sheetTitle = ({ x, y, width }: Rect, title: string): Atom[] => {
  const { small, body, strong } = letters;
  const size = sizeToFit(title, width, [small, body, strong], 'bold');
  const look = { size, weight: 'bold', width } as const;
  if (textWidth(printable(title), size, 'bold') <= width)
    return lineOfText(title, x, y + 0.18, look);
  const [first = '', ...rest] = wrapText(title, look);
  return [
    ...lineOfText(first, x, y + 0.12, look),
    ...lineOfText(rest.join(' '), x, y + 0.28, look),
  ];
};

const rules = ({ title }: SheetFrame, starts: readonly number[]): Atom => {
  const low = title.y + title.height - 0.24;
  return {
    do: 'stroke',
    pen: pens.thin,
    outline: segmentsOutline([
      [
        { x: title.x, y: low },
        { x: title.x + title.width, y: low },
      ],
      ...starts.map(
        (x) =>
          [
            { x: x - 0.1, y: title.y },
            { x: x - 0.1, y: low },
          ] as const,
      ),
    ]),
  };
};

/**
 * The frames of the sheets of a set on one paper and their title blocks: job, customer, place, who and when, sheet and
 * check value. What all of them say is set once.
 */
export const titleBlocks = (
  frame: SheetFrame,
  { job }: Pick<Site, 'job'>,
  { of, check, sort = phraseOf('brand')`crew sheet` }: SetName,
): ((name: SheetName) => Atom[]) => {
  const { outer, title: box } = frame;
  const { job: first, who, sheet } = cells(box);
  const in1 = (look: LineLook): LineLook => ({ ...look, width: first.width });
  const name = job.name.trim() === '' ? phrase`Job without a name` : job.name;
  const sizes = [letters.body, letters.strong, letters.heading, letters.title];
  const big = { size: sizeToFit(name, first.width, sizes, 'bold'), weight: 'bold' } as const;
  const low = box.y + box.height - 0.12;
  const around = rectangleOutline(outer, outer.width, outer.height);
  const before: readonly Atom[] = [
    { do: 'stroke', pen: pens.frame, outline: around },
    { do: 'stroke', pen: pens.frame, outline: rectangleOutline(box, box.width, box.height) },
    rules(frame, [first.x, who.x, sheet.x]),
    ...brand(box, sort),
    ...lineOfText(name, first.x, box.y + 0.2, in1(big)),
    ...lineOfText(job.customer, first.x, box.y + 0.44, in1({})),
    ...lineOfText(job.place, first.x, box.y + 0.63, in1({})),
    ...rows(
      [
        [phrase`Drawn by`, job.drawnBy],
        [phrase`Date`, job.date],
        [phrase`Revision`, job.revision],
      ],
      who,
    ),
  ];
  const after: readonly Atom[] = [
    ...lineOfText(phrase`Check ${check}`, sheet.x, box.y + 0.62, { width: sheet.width }),
    ...lineOfText(reminder, box.x + 0.1, low, { size: letters.small, width: box.width - 0.2 }),
  ];
  return ({ title, number }) => {
    const counted = phrase`Sheet ${number} of ${of}`;
    return [
      ...before,
      ...sheetTitle(sheet, title),
      ...lineOfText(counted, sheet.x, box.y + 0.44, { width: sheet.width }),
      ...after,
    ];
  };
};
