import type { CustomerPrice } from '../../engine/price/customerPrice.ts';
import { formatMoney, type Money } from '../../units/money.ts';
import type { Atom } from '../atom.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import { printable } from '../printable.ts';
import type { Block } from '../sheet/flow/block.ts';
import { handRow } from '../sheet/flow/handRow.ts';
import { heading } from '../sheet/flow/heading.ts';
import { paragraph } from '../sheet/flow/paragraph.ts';
import { stackBlocks } from '../sheet/flow/stackBlocks.ts';
import { letters, lineSpacing } from '../sheet/letters.ts';
import { lineOfText, sizeToFit } from '../sheet/lineOfText.ts';
import { textWidth } from '../textWidth.ts';

/** Clear over and under a row of the price, and between a word and its amount; paper inches. */
const pad = 0.05;
const apart = 0.15;
/** A currency of no more letters stands before the total; a longer one in a line of its own. */
const shortCurrency = 6;
/** Room for a date that is written by hand, paper inches. */
const dateRoom = 0.9;
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
  const parts = tax === null ? [] : [amountLine('Subtotal', subtotal), amountLine('Tax', tax)];
  return [
    ...parts.map((one) => line(one, width)),
    rule(width),
    line(
      {
        word: tax === null ? 'Total, no tax in it' : 'Total, tax included',
        amount: isShort ? `${currency} ${formatMoney(total)}` : formatMoney(total),
        weight: 'bold',
        sizes: [letters.small, letters.body, letters.strong, letters.heading],
      },
      width,
    ),
    ...(isShort ? [] : paragraph(`Amounts are in ${currency}.`, width).slice(0, 2)),
  ];
};

/**
 * What it comes to, with tax told apart, and a line to write by hand until when that holds. Where the price
 * is not worked out one line says so, and there is no amount.
 */
export const priceBlock = (price: CustomerPrice, width: number): Block =>
  stackBlocks([
    heading('Price', width),
    ...(price.kind === 'told'
      ? told(price, width)
      : paragraph('The price is still to be worked out.', width)),
    space,
    handRow([{ label: 'Valid until', hand: dateRoom, known: '' }], width),
  ]);
