import type { OtherWay } from '../../engine/compare/customerPrices.ts';
import type { CustomerPrice } from '../../engine/price/customerPrice.ts';
import { formatMoney, type Money } from '../../units/money.ts';
import type { Atom } from '../atom.ts';
import { rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { moveAtoms } from '../moveAtoms.ts';
import { pens } from '../pens.ts';
import { printable } from '../printable.ts';
import type { Block } from '../sheet/flow/block.ts';
import { heading, subheading } from '../sheet/flow/heading.ts';
import { paragraph } from '../sheet/flow/paragraph.ts';
import { stackBlocks } from '../sheet/flow/stackBlocks.ts';
import { letters, lineSpacing } from '../sheet/letters.ts';
import { lineOfText, sizeToFit } from '../sheet/lineOfText.ts';
import { textWidth } from '../textWidth.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Clear over and under a row of the price, and between a word and its amount; paper inches. */
const pad = 0.05;
const apart = 0.15;
/** A currency of no more letters stands before the total; a longer one in a line of its own. */
const shortCurrency = 6;
/** The same of a row of ways to build it; each is named in no more lines than `mostLines`. */
const tight = 0.03;
const mostLines = 3;
const space: Block = { height: 0.12, atoms: [] };

interface Line {
  readonly word: string;
  readonly amount: string;
  readonly weight: 'regular' | 'bold';
  readonly sizes: readonly number[];
}

const wide = (text: string, size: number, weight: Line['weight']): number =>
  textWidth(printable(text), size, weight);

/** A word and its amount on one line, or the amount under it where that is too long. */
const line = ({ word, amount, weight, sizes }: Line, width: number): Block => {
  const own = wide(word, letters.body, weight);
  const beside = width - own - apart;
  const size = sizeToFit(amount, beside, sizes, weight);
  const fits = wide(amount, size, weight) <= beside;
  const large = fits ? size : sizeToFit(amount, width, sizes, weight);
  const first = lineSpacing * (fits ? Math.max(letters.body, size) : letters.body);
  const next = fits ? 0 : large * lineSpacing;
  const at = fits ? first / 2 : first + next / 2;
  return {
    height: first + next + 2 * pad,
    atoms: [
      ...lineOfText(word, 0, pad + first / 2, { weight, width }),
      ...lineOfText(amount, width, pad + at, { size: large, weight, align: 'right' }),
    ],
  };
};

const rule = (width: number): Block => {
  const ends = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
  ] as const;
  const pen = { ink: 'line', width: 0.014, dash: [] } as const;
  const stroke: Atom = { do: 'stroke', pen, outline: segmentsOutline([ends]) };
  return { height: 0, atoms: [stroke] };
};

const amountLine = (word: string, amount: Money): Line => ({
  word,
  amount: formatMoney(amount),
  weight: 'regular',
  sizes: [letters.small, letters.body],
});

const told = (price: Extract<CustomerPrice, { kind: 'told' }>, width: number): Block[] => {
  const { currency, subtotal, tax, total } = price;
  const isShort = [...currency].length <= shortCurrency;
  const parts =
    tax === null ? [] : [amountLine(phrase`Subtotal`, subtotal), amountLine(phrase`Tax`, tax)];
  return [
    ...parts.map((one) => line(one, width)),
    rule(width),
    line(
      {
        word: tax === null ? phrase`Total, no tax in it` : phrase`Total, tax included`,
        amount: isShort ? `${currency} ${formatMoney(total)}` : formatMoney(total),
        weight: 'bold',
        sizes: [letters.small, letters.body, letters.strong, letters.heading],
      },
      width,
    ),
    ...(isShort ? [] : paragraph(phrase`Amounts are in ${currency}.`, width).slice(0, 2)),
  ];
};

/** A box to mark by hand, its side in paper inches, and the room that it takes before a word. */
const box = { side: 0.12, room: 0.2 } as const;

/** A way to build it with a box to mark, and its total beside it or under it. */
const wayRow = (label: string, total: Money, width: number): Block => {
  const amount = formatMoney(total);
  const inner = width - box.room;
  const words = inner - wide(amount, letters.body, 'regular') - apart;
  const beside = words > inner / 3;
  const lines = paragraph(label, beside ? words : inner).slice(0, mostLines);
  const under = beside ? [] : [line({ ...amountLine('', total), word: '' }, inner)];
  const own = stackBlocks([...lines, ...under]);
  const first = (letters.body * lineSpacing) / 2;
  return {
    height: own.height + 2 * tight,
    atoms: [
      {
        do: 'stroke',
        pen: pens.thin,
        outline: rectangleOutline({ x: 0, y: tight + first - box.side / 2 }, box.side, box.side),
      },
      ...moveAtoms(own.atoms, box.room, tight),
      ...(beside ? lineOfText(amount, width, tight + first, { align: 'right' }) : []),
    ],
  };
};

/** As many ways as a height holds, the yard as drawn first, then how many more there are. */
const ways = (rows: readonly Block[], width: number, height: number): Block => {
  const lead = subheading(phrase`Totals to choose from`, width);
  const all = stackBlocks([lead, ...rows]);
  if (all.height <= height) return all;
  for (let count = rows.length - 1; count > 0; count -= 1) {
    const more = paragraph(phrase`And ${rows.length - count} more ways, not listed here.`, width);
    const block = stackBlocks([lead, ...rows.slice(0, count), ...more]);
    if (block.height <= height) return block;
  }
  return stackBlocks(
    paragraph(phrase`${rows.length - 1} other ways to build it, not listed here.`, width),
  );
};

/** What a page tells of the price: of the yard as drawn, and of other ways to build it. */
export interface PriceTold {
  readonly price: CustomerPrice;
  readonly others: readonly OtherWay[];
}

/** The yard as drawn and every other way, side by side with their totals; nothing where there is no other. */
const choice = ({ price, others }: PriceTold, width: number, height: number): Block[] => {
  if (price.kind === 'open' || others.length === 0) return [];
  const named = (label: string, plan: OtherWay['plan']): string =>
    plan === 'final' ? label : phrase`${label} (not final)`;
  return [
    space,
    ways(
      [
        wayRow(phrase`As drawn here`, price.total, width),
        ...others.map(({ label, total, plan }) => wayRow(named(label, plan), total, width)),
      ],
      width,
      height - space.height,
    ),
  ];
};

/**
 * What it comes to, with tax told apart, and what other ways to build it come to, no higher than a height;
 * paper inches. Where the price is not worked out one line says so,
 * and there is no amount.
 */
export const priceBlock = (shown: PriceTold, width: number, height: number): Block => {
  const { price } = shown;
  const own = stackBlocks([
    heading(phrase`Price`, width),
    ...(price.kind === 'told'
      ? told(price, width)
      : paragraph(phrase`The price is still to be worked out.`, width)),
  ]);
  return stackBlocks([own, ...choice(shown, width, height - own.height)]);
};
