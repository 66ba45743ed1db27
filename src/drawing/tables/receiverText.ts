import type { Receiver } from '../../site/receiver.ts';
import { phrase } from '../../phrases/phrase.ts';

const made: Readonly<Record<Receiver['kind'], string>> = {
  'driven pipe': phrase`driven pipe, its end flattened`,
  drilled: phrase`hole drilled`,
  'set in concrete': phrase`sleeve set in concrete, its top flush`,
};

const grounds: Readonly<Record<Receiver['ground'], string>> = {
  'firm soil': phrase`firm soil`,
  'loose soil': phrase`loose soil`,
  concrete: phrase`concrete`,
  paving: phrase`paving`,
};

/** What a drop rod drops into and in what ground, as a crew makes it. */
export const receiverText = ({ kind, ground }: Pick<Receiver, 'kind' | 'ground'>): string =>
  phrase`${made[kind]}, in ${grounds[ground]}`;
