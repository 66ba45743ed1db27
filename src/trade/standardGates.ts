import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';

/** An opening that gates are commonly sold for. A suggestion, never a dimension to build to. */
export interface StandardGate {
  readonly leaves: 1 | 2;
  readonly opening: Inches;
  readonly source: Source;
}

const sheet: Source = {
  text: 'Chain Link Fencing, Detailed Instructions (installation sheet, Scribd 154728461)',
  status: 'published',
};

const gate = (leaves: 1 | 2, opening: number): StandardGate => ({
  leaves,
  opening: inches(opening),
  source: sheet,
});

/** Single gates, then double gates, by rising opening. */
export const standardGates: readonly StandardGate[] = [
  ...[36, 39, 42, 48].map((opening) => gate(1, opening)),
  ...[120, 144].map((opening) => gate(2, opening)),
];
