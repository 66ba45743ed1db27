import { alike } from '../../engine/carry/alike.ts';

/** What was drawn before where what is drawn now holds the same, so that it is not drawn on paper again. */
export const kept = <Drawn>(before: Drawn | undefined, now: Drawn): Drawn =>
  before !== undefined && alike(before, now) ? before : now;
