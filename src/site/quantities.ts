import { z } from './z.ts';
import { farthest } from '../geometry/tolerance.ts';
import type { Inches } from '../units/inches.ts';
import type { Radians } from '../units/radians.ts';

// minus zero would not come back from a file as it was
const plusZero = (value: number): number => value + 0;

/** A number from one to another; minus zero is taken as zero. */
export const within = (low: number, high: number) =>
  z.number().min(low).max(high).overwrite(plusZero);

// the one place where a number read from a file becomes a length or an angle
const asLength = (schema: z.ZodNumber) => schema as unknown as z.ZodType<Inches, number>;

/** A coordinate in inches. */
export const coordinate = within(-farthest, farthest);
/** A length of zero or more, in inches. */
export const length = asLength(within(0, farthest));
/** A length above zero, in inches. */
export const positiveLength = asLength(z.number().gt(0).max(farthest));
/** A length of either sign, in inches. */
export const signedLength = asLength(within(-farthest, farthest));
/** An angle from 0 to π, in radians. */
export const angle = within(0, Math.PI) as unknown as z.ZodType<Radians, number>;
/** A direction in radians, counter-clockwise from the x axis, from -π to π. */
export const bearing = within(-Math.PI, Math.PI) as unknown as z.ZodType<Radians, number>;
/** Rise over run, from 0; 1 is a slope of 45 degrees. */
export const ratio = within(0, 100);
/** One line of text that a person typed. */
export const label = z.string().max(200);
/** Several lines of text that a person typed. */
export const remark = z.string().max(4000);
