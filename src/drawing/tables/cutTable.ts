import type { LoadTicket } from '../../engine/load/load.ts';
import type { TicketStick } from '../../engine/cut/cutTicket.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { Column, Table } from './table.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`No.`, align: 'right', share: 0 },
  { heading: phraseOf('stick')`From`, align: 'left', share: 0.6 },
  { heading: phrase`Cut, in this order`, align: 'left', share: 3 },
  { heading: phrase`Left over`, align: 'right', share: 0.6 },
];

/** Sticks that are cut alike, the pieces for the same uses, as one row. */
interface Row {
  readonly first: number;
  last: number;
  readonly stick: TicketStick;
}

const alike = (a: TicketStick, b: TicketStick): boolean =>
  a.from === b.from &&
  a.stick === b.stick &&
  a.left === b.left &&
  a.pieces.length === b.pieces.length &&
  a.pieces.every(
    ({ length, for: name }, n) => length === b.pieces[n]?.length && name === b.pieces[n]?.for,
  );

const rowsOf = (sticks: readonly TicketStick[]): Row[] => {
  const rows: Row[] = [];
  sticks.forEach((stick, n) => {
    const row = rows.at(-1);
    if (row !== undefined && alike(row.stick, stick)) row.last = n + 1;
    else rows.push({ first: n + 1, last: n + 1, stick });
  });
  return rows;
};

const sticks = (count: number): string => (count === 1 ? phrase`1 stick` : phrase`${count} sticks`);
const rolls = (count: number): string => (count === 1 ? phrase`1 roll` : phrase`${count} rolls`);
const panels = (count: number): string => (count === 1 ? phrase`1 panel` : phrase`${count} panels`);

const counted = {
  rail: sticks,
  fabric: rolls,
  post: sticks,
  lumber: sticks,
  panel: panels,
} as const;

const tooLongText = {
  rail: phrase`longer than any stick`,
  fabric: phrase`longer than any stick`,
  post: phrase`longer than any stick`,
  lumber: phrase`longer than any stick`,
  panel: phrase`wider than the panel`,
} as const;

/** How near to the fewest that anybody can do with, in words. */
const provenText = ({ ticket: { bought, least, sticks: cut }, kind }: LoadTicket): string => {
  const many = counted[kind](bought);
  if (kind === 'panel') return phrase`${many} to be cut, one a bay`;
  const yard = cut.filter(({ from }) => from === 'offcut').length;
  if (yard > 0 && bought === 0) return phrase`none bought, ${yard} from the yard`;
  const besides = yard > 0 ? phrase`, and ${yard} from the yard` : '';
  return bought === least
    ? phrase`${many}, proven the fewest${besides}`
    : phrase`${many}; proven that ${least} at least are needed${besides}`;
};

/** The cuts of one pipe or fabric, stick by stick: a ticket that a shop can saw from. */
export const cutTable = (cut: LoadTicket, { lengths }: Pick<Site, 'lengths'>): Table => {
  const say = (length: Inches): string => formatLength(length, fineStyle(lengths));
  const { ticket, item } = cut;
  const joints = ticket.joints === 0 ? '' : phrase`, ${ticket.joints} joints`;
  return {
    title: `${item}: ${provenText(cut)}${joints}`,
    columns,
    rows: [
      ...rowsOf(ticket.sticks).map(({ first, last, stick }) => [
        first === last ? String(first) : phrase`${first} to ${last}`,
        stick.from === 'offcut' ? phrase`the yard, ${say(stick.stick)}` : say(stick.stick),
        stick.pieces.map(({ length, for: name }) => `${say(length)} ${name}`).join('; '),
        stick.left > 0 ? say(stick.left) : '',
      ]),
      ...ticket.tooLong.map(({ length, for: name }) => [
        '',
        phrase`none`,
        `${say(length)} ${name}: ${tooLongText[cut.kind]}`,
        '',
      ]),
    ],
  };
};
