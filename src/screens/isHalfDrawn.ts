import type { Bench } from './bench.ts';

/** Whether something is half drawn: a piece in hand, a question that waits, or a gesture that runs. */
export const isHalfDrawn = ({ sender, site }: Pick<Bench, 'sender' | 'site'>): boolean => {
  const { piece, asked } = sender.hand.getState();
  return piece !== null || asked !== null || site.getState().history.draft !== null;
};
