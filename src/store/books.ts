import type { Hardware } from '../site/hardware.ts';
import type { HardwareId, TownRuleId } from '../site/ids.ts';
import type { TownRule } from '../site/townRule.ts';
import type { BookStore } from './bookStore.ts';

/** The books that a company keeps on its device, apart from any document. */
export interface Books {
  readonly book: BookStore<HardwareId, Hardware>;
  readonly townBook: BookStore<TownRuleId, TownRule>;
}
