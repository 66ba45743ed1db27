import type { Site } from '../../site/site.ts';
import type { Work } from '../../site/work.ts';
import { labourTasks, rockTimes, type LabourTask } from '../../trade/labour.ts';
import { addMoney, noMoney, timesMoney, toCents, type Money } from '../../units/money.ts';
import type { Layout } from '../layout.ts';
import type { Counted } from '../load/counted.ts';
import { countedThings } from '../load/countedThings.ts';
import { hungPieces } from '../load/hungPieces.ts';
import type { Load } from '../load/load.ts';
import type { LoadLine } from '../loadLine.ts';
import type { Price, PriceList } from '../../site/priceList.ts';

/** A line of the load list with its price; null where the list has none that fits. */
export interface PricedLine {
  readonly line: LoadLine;
  /** How many of what the price is for. */
  readonly quantity: number;
  readonly unit: Price['unit'] | null;
  readonly price: Money | null;
  readonly total: Money | null;
}

/** A figure of the work, and whose it is. */
export interface WorkFigure {
  readonly value: number;
  readonly from: 'ours' | 'price list';
}

/** The hours of one task, and what they come to; null without a price for an hour. */
export interface PricedTask {
  readonly id: string;
  readonly task: string;
  readonly hours: number;
  /** The hours that it was reckoned with, each or for every hundred feet. */
  readonly rate: WorkFigure;
  readonly per: LabourTask['per'];
  /** How many times as long in rock; null where no hole of it is in rock. */
  readonly rock: WorkFigure | null;
  readonly total: Money | null;
}

/** A load list and its work, priced. Amounts are to the cent, so that they add up as printed. */
export interface PricedLoad {
  readonly currency: string;
  readonly lines: readonly PricedLine[];
  readonly tasks: readonly PricedTask[];
  readonly materials: Money;
  readonly labour: Money;
  readonly margin: Money;
  readonly tax: Money;
  readonly total: Money;
  /** What has no price, by its code: nothing of it is in the total. */
  readonly unpriced: readonly string[];
}

const cubicMetre = 35.3146667;

/** How many of its unit a price is for; null where it cannot be told of such a line. */
const quantityOf = ({ unit }: Price, line: LoadLine): number | null => {
  const { count, each, sold } = line;
  const pieces = line.unit === 'each' && each !== null ? count * each : null;
  const inches = line.unit === 'length' ? count : pieces;
  switch (unit) {
    case 'each':
      return line.unit === 'each' ? count : null;
    case 'pack':
      return sold?.count ?? null;
    case 'ft':
      return inches === null ? null : inches / 12;
    case 'm':
      return inches === null ? null : inches * 0.0254;
    case 'cu ft':
      return line.unit === 'cubic feet' ? count : null;
    case 'cu m':
      return line.unit === 'cubic feet' ? count / cubicMetre : null;
    case 'hour':
    case 'percent':
      return null;
  }
};

const pricedLine = (line: LoadLine, { prices }: PriceList): PricedLine => {
  const price = prices.get(line.code);
  const quantity = price === undefined ? null : quantityOf(price, line);
  if (price === undefined || quantity === null) {
    return { line, quantity: line.count, unit: null, price: null, total: null };
  }
  const total = toCents(timesMoney(price.price, quantity));
  return { line, quantity, unit: price.unit, price: price.price, total };
};

const hundredFeet = 1200;

/** A figure of the company's where it has one, else ours. */
const figure = (own: number | null | undefined, ours: number): WorkFigure =>
  own === null || own === undefined
    ? { value: ours, from: 'ours' }
    : { value: own, from: 'price list' };

/** How much of a task there is: things, or hundreds of feet. */
const amountOf = (
  { by, per }: LabourTask,
  {
    things,
    holes,
    leaves,
    work,
    rock,
  }: {
    readonly things: readonly Counted[];
    readonly holes: number;
    readonly leaves: number;
    readonly work: Work;
    readonly rock: WorkFigure;
  },
): number => {
  if (by === 'hole') return holes * (1 + work.rock * (rock.value - 1));
  if (by === 'leaf') return leaves;
  if (by === 'old fence') return work.tearOut / hundredFeet;
  const own = things.filter(({ basis }) => basis === by);
  if (per === 'each') return own.reduce((sum, { count }) => sum + count, 0);
  return own.reduce((sum, { count, length }) => sum + count * length, 0) / hundredFeet;
};

/** What hours come to by the price of one; null without such a price, nothing for no hours. */
const worth = (hours: number, hour: Price | undefined): Money | null => {
  if (hours === 0) return noMoney;
  return hour?.unit === 'hour' ? toCents(timesMoney(hour.price, hours)) : null;
};

const tasksOf = (site: Site, layout: Layout, list: PriceList): PricedTask[] => {
  const things = countedThings(hungPieces(site, layout), layout);
  const holes = [...layout.posts.values()].filter(({ hole }) => hole.depth > 0).length;
  const leaves = Object.values(site.gates).reduce(
    (sum, gate) => sum + Object.keys(gate.leaves).length,
    0,
  );
  const { work } = site;
  const hour = list.prices.get('hour');
  const rock = figure(list.rock, rockTimes);
  return labourTasks.flatMap((task): PricedTask[] => {
    const amount = amountOf(task, { things, holes, leaves, work, rock });
    if (amount === 0) return [];
    const { id, per } = task;
    const rate = figure(list.hours.get(id), task.hours);
    const hours = amount * rate.value * (1 + work.access);
    const inRock = task.by === 'hole' && work.rock > 0 ? rock : null;
    return [{ id, task: task.task, hours, rate, per, rock: inRock, total: worth(hours, hour) }];
  });
};

const summed = (totals: readonly (Money | null)[]): Money =>
  totals.reduce<Money>((sum, total) => addMoney(sum, total ?? noMoney), noMoney);

/** A share of an amount by a price list's percentage; nothing where it has none. */
const shareOf = (amount: Money, price: Price | undefined): Money =>
  price?.unit === 'percent'
    ? toCents(timesMoney(amount, Number(price.price) / 1_000_000 / 100))
    : noMoney;

/**
 * A load list priced by a company's list: materials, labour by task, margin on both and tax on all. What has
 * no price that fits is named and not in the total.
 */
export const pricedLoad = (
  site: Site,
  layout: Layout,
  { load, list }: { readonly load: Load; readonly list: PriceList },
): PricedLoad => {
  const lines = load.lines.map((line) => pricedLine(line, list));
  const tasks = tasksOf(site, layout, list);
  const materials = summed(lines.map(({ total }) => total));
  const labour = summed(tasks.map(({ total }) => total));
  const cost = addMoney(materials, labour);
  const margin = shareOf(cost, list.prices.get('margin'));
  const tax = shareOf(addMoney(cost, margin), list.prices.get('tax'));
  return {
    currency: list.currency,
    lines,
    tasks,
    materials,
    labour,
    margin,
    tax,
    total: addMoney(addMoney(cost, margin), tax),
    unpriced: [
      ...new Set([
        ...lines.flatMap(({ line, total }) => (total === null ? [line.code] : [])),
        ...(tasks.some(({ total }) => total === null) ? ['hour'] : []),
      ]),
    ],
  };
};
