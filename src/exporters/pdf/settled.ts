/** Steps in an inch of paper: what is lost by them is less than 0.001 in of ground at 1 in to 100 ft. */
const steps = 1e6;

/**
 * Where numbers part that go to one step or the next: 2 less the golden ratio, since no fraction of an inch
 * that anybody draws lies there.
 */
const part = 0.381966011250105;

/**
 * A place on the paper, inches, set to a step. Machines differ in the last bit of a sine; a number halfway
 * between two that are written, as fractions of an inch are, would be written one way here and the other there.
 */
export const settled = (inches: number): number => Math.floor(inches * steps + part) / steps;
