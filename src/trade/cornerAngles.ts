import { fromDegrees } from '../units/radians.ts';
import type { Source } from './source.ts';
import type { Radians } from '../units/radians.ts';
import { phrase } from '../phrases/phrase.ts';

/** A turn above which somebody asks for a corner post. */
export interface CornerAngle {
  readonly angle: Radians;
  readonly source: Source;
}

const row = (degrees: number, text: string): CornerAngle => ({
  angle: fromDegrees(degrees),
  source: { text, status: 'published' },
});

/** Used unless a fence spec says otherwise. */
export const defaultCornerAngle = row(
  30,
  'W. McElroy, Fences & Retaining Walls, Craftsman: chain link',
);

/** What is published, from strict to lenient; ASTM F567-07 says only "abrupt". */
export const cornerAngles: readonly CornerAngle[] = [
  row(5, phrase`Caltrans Standard Specifications 80-2.01B: wire fence, steel posts`),
  row(10, 'Iowa DOT Standard Specifications 2519'),
  row(15, phrase`Caltrans Standard Specifications 80-2.01B: wire fence, wood posts`),
  defaultCornerAngle,
];
