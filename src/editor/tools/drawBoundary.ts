import { inches } from '../../units/inches.ts';
import { drawShape } from './drawShape.ts';

/** Draws a lot line: closed when the hand closes it, open when it finishes. */
export const drawBoundary = drawShape({
  noun: 'boundary',
  pen: 'boundary',
  ends: 'either',
  fields: (_, end) => ({
    kind: 'boundary',
    label: '',
    closed: end === 'closed',
    setback: inches(0),
  }),
});
