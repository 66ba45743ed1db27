import type { Inches } from '../units/inches.ts';
import { usualFrontYard } from './frontYards.ts';
import { sightTriangles, usualSightLimit } from './sightTriangles.ts';
import type { Source } from './source.ts';

/** A limit of height that is published or usual for such ground, inches. */
export interface HeightZoneLimits {
  readonly solid: Inches;
  readonly open: Inches;
  readonly source: Source;
}

/** What is known of the limits of a sight triangle or a front yard; what a new one starts with stands first. */
export const heightZoneLimits: Readonly<
  Record<'sight triangle' | 'front yard', readonly [HeightZoneLimits, ...HeightZoneLimits[]]>
> = {
  'sight triangle': [usualSightLimit, ...sightTriangles],
  'front yard': [usualFrontYard],
};
