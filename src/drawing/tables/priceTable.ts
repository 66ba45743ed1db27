import type { PricedLoad } from '../../engine/price/pricedLoad.ts';
import { formatMoney, type Money } from '../../units/money.ts';
import { taskText } from './hoursTexts.ts';
import type { Column, Table } from './table.ts';

const columns: readonly Column[] = [
  { heading: 'Item', align: 'left', share: 2 },
  { heading: 'Code', align: 'left', share: 1.5 },
  { heading: 'Quantity', align: 'right', share: 1 },
  { heading: 'Unit', align: 'left', share: 0 },
  { heading: 'Price', align: 'right', share: 1 },
  { heading: 'Total', align: 'right', share: 1 },
];

const quantityText = (quantity: number): string => String(Number(quantity.toFixed(2)));

const noPrice = 'no price';

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
    title: `Priced load list${currency === '' ? '' : `, ${currency}`}`,
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
        'hour',
        quantityText(task.hours),
        'hour',
        '',
        task.total === null ? noPrice : formatMoney(task.total),
      ]),
      sum('Materials', priced.materials),
      sum('Labour', priced.labour),
      sum('Margin', priced.margin),
      sum('Tax', priced.tax),
      sum('Total', priced.total),
    ],
  };
};
