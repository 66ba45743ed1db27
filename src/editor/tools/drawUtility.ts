import { drawShape } from './drawShape.ts';

/** Draws a buried or overhead service of the kind that the session plans, with its tolerance. */
export const drawUtility = drawShape({
  noun: 'utility line',
  pen: 'guide',
  ends: 'open',
  fields: ({ utility }) => ({ kind: 'utility', label: '', ...utility }),
});
