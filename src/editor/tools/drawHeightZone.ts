import type { Feature } from '../../site/feature.ts';
import { drawShape } from './drawShape.ts';

type Of = Extract<Feature, { kind: 'height zone' }>['of'];

/** The tool that draws ground with a height limit corner by corner, with the limits that the session plans. */
export const drawHeightZone = (of: Of) =>
  drawShape({
    noun: of,
    pen: 'height zone',
    ends: 'closed',
    fields: ({ heights }) => ({ kind: 'height zone', label: '', of, ...heights[of] }),
  });
