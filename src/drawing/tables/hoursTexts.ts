import type { PricedLoad, PricedTask, WorkFigure } from '../../engine/price/pricedLoad.ts';
import { labourSource } from '../../trade/labour.ts';
import { phrase } from '../../phrases/phrase.ts';

const perText: Readonly<Record<PricedTask['per'], string>> = {
  each: phrase`each`,
  'hundred feet': phrase`per 100 ft`,
};

const whose = ({ from }: WorkFigure): string =>
  from === 'ours' ? phrase`ours` : phrase`price list`;

const number = (value: number): string => String(Number(value.toFixed(3)));

/** A task with the hours that it is reckoned with and whose they are, and the same of rock where there is any. */
export const taskText = ({ task, rate, per, rock }: PricedTask): string => {
  const hours = phrase`${number(rate.value)} hours ${perText[per]} (${whose(rate)})`;
  const slow =
    rock === null ? '' : phrase`, in rock ${number(rock.value)} times as long (${whose(rock)})`;
  return `${task}: ${hours}${slow}`;
};

/** Whose hours a priced list was reckoned with, in one line; null where it has no work. */
export const hoursSourceText = ({ tasks }: Pick<PricedLoad, 'tasks'>): string | null => {
  const figures = tasks.flatMap(({ rate, rock }) => (rock === null ? [rate] : [rate, rock]));
  if (figures.length === 0) return null;
  const ours = figures.filter(({ from }) => from === 'ours').length;
  if (ours === 0) return phrase`hours are those of the price list`;
  if (ours === figures.length) return labourSource.text;
  return phrase`those not of the price list: ${labourSource.text}`;
};
