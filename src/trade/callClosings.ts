import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How well calls close where somebody asks for it: one part in so many of the perimeter. */
export interface CallClosing {
  /** The n of 1:n. */
  readonly parts: number;
  readonly name: string;
  readonly source: Source;
}

/** From rough to fine. */
export const callClosings: readonly CallClosing[] = [
  {
    parts: 2_000,
    name: phrase`tax maps, open country`,
    source: {
      text: phrase`N.J.A.C. 18:23A-1.23: 0.5 ft in 1,000 ft, rural districts, flat country`,
      status: 'published',
    },
  },
  {
    parts: 5_000,
    name: phrase`surveys for subdivision`,
    source: {
      text: phrase`Ripley County IN 155.047: one part in 5,000, plus 0.20 ft`,
      status: 'published',
    },
  },
  {
    parts: 10_000,
    name: phrase`surveys in town`,
    source: {
      text: phrase`21 NCAC 56 .1603(c): 1 ft in 10,000 ft of perimeter, urban land`,
      status: 'published',
    },
  },
  {
    parts: 20_000,
    name: phrase`local control`,
    source: {
      text: phrase`21 NCAC 56 .1603(b): 1 ft in 20,000 ft of perimeter, local control networks`,
      status: 'published',
    },
  },
];

/** What calls have to close to until somebody says otherwise: the n of 1:n. */
export const usualCallClosing = 5_000;
