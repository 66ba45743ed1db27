import { inches, type Inches } from '../../units/inches.ts';

/**
 * How many standard deviations the circle reaches that holds a place 95 times in 100, where it scatters
 * alike both ways: the square root of -2 ln 0.05, 2.448 (Rayleigh distribution).
 */
const reach95 = Math.sqrt(-2 * Math.log(1 - 0.95));

/**
 * The radius within which a place lies 95 times in 100, of the standard deviation of its east and of
 * its north; both in inches.
 */
export const radius95 = (deviation: Inches): Inches => inches(deviation * reach95);

/**
 * The standard deviation of east and of north of a place that lies within a radius 95 times in 100;
 * both in inches. That is what a browser tells of a position: W3C Recommendation Geolocation API
 * Specification, 2nd edition (8 November 2016), section 5.4, has its accuracy correspond to a 95 %
 * confidence level.
 */
export const deviationOf95 = (radius: Inches): Inches => inches(radius / reach95);
