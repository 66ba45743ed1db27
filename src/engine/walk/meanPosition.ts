import { inches, type Inches } from '../../units/inches.ts';
import type { Position } from './readPosition.ts';

/**
 * The radius than which nothing better is told, 4.9 m (16 ft): what phones have under open sky. GPS.gov,
 * GPS Accuracy, after F. van Diggelen and P. Enge, The World's first GPS MOOC and Worldwide Laboratory
 * using Smartphones, ION GNSS+ 2015. Readings taken one after another have their errors in common
 * (the air, the satellites, the walls about), so the mean of many is no better than that either.
 */
export const bestRadius: Inches = inches(4.9 / 0.0254);

/** A longitude in degrees as the same place from -180 to 180. */
const wrapped = (degrees: number): number => degrees - 360 * Math.round(degrees / 360);

/**
 * The mean of readings taken while standing still, each weighing by the inverse square of its radius. It
 * is told to be as good as the best of them and no better, and never better than `bestRadius`. Null
 * for none.
 */
export const meanPosition = (readings: readonly Position[]): Position | null => {
  const [first] = readings;
  if (first === undefined) return null;
  const radii = readings.map(({ radius }) => Math.max(radius, bestRadius));
  const least = Math.min(...radii);
  const weights = radii.map((radius) => (least / radius) ** 2);
  const total = weights.reduce((all, weight) => all + weight, 0);
  // from the first on, so that the date line parts no two of them
  const mean = (off: (reading: Position) => number): number =>
    readings.reduce((all, reading, n) => all + (weights[n] ?? 0) * off(reading), 0) / total;
  return {
    latitude: first.latitude + mean(({ latitude }) => latitude - first.latitude),
    longitude: wrapped(
      first.longitude + mean(({ longitude }) => wrapped(longitude - first.longitude)),
    ),
    radius: inches(least),
  };
};
