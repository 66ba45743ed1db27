import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How open the land is from which the wind comes. */
export interface Exposure {
  readonly name: 'B' | 'C' | 'D';
  readonly label: string;
  /** Velocity pressure exposure coefficient up to 15 ft over the ground. */
  readonly coefficient: number;
  /** It goes up above that with the height to the power of two over this. */
  readonly alpha: number;
}

/** Where the terms of velocity pressure come from. */
export const windSource: Source = {
  text: phrase`ASCE 7-16 chapters 26 and 29; from memory`,
  status: 'memory',
};

/** From sheltered to open. C is taken where nobody has said. */
export const exposures: readonly Exposure[] = [
  { name: 'B', label: phrase`town, suburb, woods`, coefficient: 0.57, alpha: 7 },
  {
    name: 'C',
    label: phrase`open land with scattered obstructions`,
    coefficient: 0.85,
    alpha: 9.5,
  },
  { name: 'D', label: phrase`beside open water`, coefficient: 1.03, alpha: 11.5 },
];

const level = 180;

/**
 * The exposure coefficient at a height over the ground, inches: that of the table up to 15 ft, above it by the
 * power law of ASCE 7-16 Table 26.10-1 (2.01 (z ÷ zg)^(2 ÷ α)), from memory.
 */
export const exposureAt = (
  { coefficient, alpha }: Pick<Exposure, 'coefficient' | 'alpha'>,
  height: number,
): number => coefficient * (Math.max(height, level) / level) ** (2 / alpha);

/** Directionality of signs and frames, gust factor of what is rigid, and flat ground. */
export const directionality = 0.85;
export const gust = 0.85;
export const flatGround = 1;

/** Pounds per square foot for a mile per hour squared. */
export const pressureFactor = 0.00256;

/** What wind at strength level counts for where allowable stresses are used: ASCE 7-16 2.4.1, from memory. */
export const allowableWind = 0.6;

/** The same of wind that blows on ice: ASCE 7-16 2.4.3, from memory. */
export const allowableWindOnIce = 0.7;

/** The least that a post bends for its strength: its plastic moment over this. AISC 360-16 F8, from memory. */
export const bendingDivisor = 1.67;

export const bendingSource: Source = {
  text: phrase`AISC 360-16 F1 and F8, round pipe that does not buckle, allowable strength; from memory`,
  status: 'memory',
};
