import type { Receiver } from '../../site/receiver.ts';

const made: Readonly<Record<Receiver['kind'], string>> = {
  'driven pipe': 'driven pipe, its end flattened',
  drilled: 'hole drilled',
  'set in concrete': 'sleeve set in concrete, its top flush',
};

/** What a drop rod drops into and in what ground, as a crew makes it. */
export const receiverText = ({ kind, ground }: Pick<Receiver, 'kind' | 'ground'>): string =>
  `${made[kind]}, in ${ground}`;
