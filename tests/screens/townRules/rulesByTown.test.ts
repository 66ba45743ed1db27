import { expect, it } from 'vitest';
import { rulesByTown } from '../../../src/screens/townRules/rulesByTown.ts';
import type { TownRule } from '../../../src/site/townRule.ts';
import { inches } from '../../../src/units/inches.ts';

const rule = (town: string, measure: TownRule['measure']): TownRule => ({
  town,
  measure,
  limit: measure === null ? null : inches(48),
  words: 'Ask',
  source: '',
});

it('rules stand by town, however its name is typed, what is measured first', () => {
  const groups = rulesByTown({
    'town-rule:a': rule('Inventedville', null),
    'town-rule:b': rule('Invented Falls', 'holes no shallower than'),
    'town-rule:c': rule('invented  falls', 'fence no higher than'),
    'town-rule:d': rule('Inventedville', 'clear passage no less than'),
  });
  expect(groups.map(({ rules }) => rules.map(([id]) => id))).toEqual([
    ['town-rule:c', 'town-rule:b'],
    ['town-rule:d', 'town-rule:a'],
  ]);
});
