import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How far to stay off a buried service that was located, from each of its sides; inches. */
export interface ToleranceZone {
  readonly length: Inches;
  readonly source: Source;
}

const zone = (length: number, text: string): ToleranceZone => ({
  length: inches(length),
  source: { text, status: 'published' },
});

/** Used for a service that is drawn, until somebody says otherwise. */
export const defaultToleranceZone = zone(
  18,
  phrase`CGA Best Practices 5.19: 18 in from each side of the facility; MS, MA, NH and ME ask for the same`,
);

/** What is published, from narrow to wide: states differ, and the one call center decides. */
export const toleranceZones: readonly ToleranceZone[] = [
  defaultToleranceZone,
  zone(24, phrase`Florida and Minnesota: 24 in from each side`),
  zone(48, phrase`Michigan, MCL 460.723: caution zone of 48 in from each side`),
];
