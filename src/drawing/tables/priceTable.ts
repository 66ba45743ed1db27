import type { PricedLoad } from '../../engine/price/pricedLoad.ts';
import { formatMoney, type Money } from '../../units/money.ts';
import { taskText } from './hoursTexts.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`Item`, align: 'left', share: 2 },
  { heading: phrase`Code`, align: 'left', share: 1.5 },
  { heading: phrase`Quantity`, align: 'right', share: 1 },
  { heading: phrase`Unit`, align: 'left', share: 0 },
  { heading: phrase`Price`, align: 'right', share: 1 },
  { heading: phrase`Total`, align: 'right', share: 1 },
];

const quantityText = (quantity: number): string => String(Number(quantity.toFixed(2)));

const noPrice = phrase`no price`;

/** A load list with its prices, the work with whose hours, and what it all comes to; what has no price says so. */
export const priceTable = (priced: PricedLoad): Table => {
  const { currency, lines, tasks } = priced;
  const sum = (label: string, amount: Money): string[] => [
    label,
    '',
    '',
    '',
    '',
    formatMoney(amount),
  ];
  return {
    title: `${phrase`Priced load list`}${currency === '' ? '' : `, ${currency}`}`,
    columns,
    rows: [
      ...lines.map(({ line, quantity, unit, price, total }) => [
        line.item,
        line.code,
        quantityText(quantity),
        unit ?? '',
        price === null ? noPrice : formatMoney(price),
        total === null ? noPrice : formatMoney(total),
      ]),
      ...tasks.map((task) => [
        taskText(task),
        phrase`hour`,
        quantityText(task.hours),
        phrase`hour`,
        '',
        task.total === null ? noPrice : formatMoney(task.total),
      ]),
      sum(phrase`Materials`, priced.materials),
      sum(phrase`Labour`, priced.labour),
      sum(phrase`Margin`, priced.margin),
      sum(phrase`Tax`, priced.tax),
      sum(phrase`Total`, priced.total),
    ],
  };
};
