import { sameTown } from './sameTown.ts';
import type { TownRule } from './townRule.ts';

/** Whether two rules of towns ask the same, wherever each says that it stands. */
export const sameTownRule = (one: TownRule, other: TownRule): boolean =>
  sameTown(one.town, other.town) &&
  one.measure === other.measure &&
  one.limit === other.limit &&
  one.words.trim() === other.words.trim();
