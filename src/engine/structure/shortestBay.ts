import { inches } from '../../units/inches.ts';

/** No bay is taken for shorter than a foot: a post that bears less wants another pipe; inches, ours. */
export const shortestBay = inches(12);
