import type { TownRuleId } from './ids.ts';
import type { TownRule } from './townRule.ts';

/** Rules of towns by their ids, as a site or the book of a company carries them. */
export type TownRules = Readonly<Record<TownRuleId, TownRule>>;
