import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { townRulesToCsv } from '../../../src/exporters/csv/townRulesToCsv.ts';
import type { BookImport } from '../../../src/importers/book/bookImport.ts';
import { townRulesFromCsv } from '../../../src/importers/book/townRulesFromCsv.ts';
import type { TownRuleId } from '../../../src/site/ids.ts';
import { townMeasures, type TownRule } from '../../../src/site/townRule.ts';
import { townRuleFault } from '../../../src/site/townRuleFault.ts';
import type { TownRules } from '../../../src/site/townRules.ts';
import { inches } from '../../../src/units/inches.ts';

const trimmed = fc.string({ unit: 'grapheme', maxLength: 60 }).map((text) => text.trim());

const anyRule: fc.Arbitrary<TownRule> = fc
  .record({
    town: trimmed,
    measure: fc.option(fc.constantFrom(...townMeasures)),
    limit: fc.option(fc.integer({ min: 0, max: 4000 }).map((n) => inches(n / 32))),
    words: fc.string({ unit: 'grapheme', maxLength: 200 }),
    source: trimmed,
  })
  .map((rule) => ({ ...rule, limit: rule.measure === null ? null : rule.limit }))
  .filter((rule) => townRuleFault(rule) === null);

const anyBook: fc.Arbitrary<TownRules> = fc.dictionary(
  fc.stringMatching(/^[A-Za-z0-9-]{1,40}$/).map((tail) => `town-rule:${tail}`),
  anyRule,
  { maxKeys: 6 },
);

const taken = (text: string, book: TownRules = {}): BookImport<TownRuleId, TownRule> => {
  let count = 0;
  const freshId = (): TownRuleId => `town-rule:new-${(count += 1)}`;
  const result = townRulesFromCsv(text, { book, freshId });
  if (!result.ok) throw new Error(result.reason);
  return result.value;
};

/** Of an invented town. */
const high: TownRule = {
  town: 'Inventedville',
  measure: 'fence no higher than',
  limit: inches(48),
  words: '',
  source: '=Code 1',
};

describe('the file of the rules of towns', () => {
  it('[X5] [X30] has five columns and a key, and no cell that a spreadsheet would run', () => {
    expect(townRulesToCsv({ 'town-rule:a': high })).toBe(
      'Town,Measure,Limit,Words,Source,Key\r\n' +
        `Inventedville,fence no higher than,"48""",,'=Code 1,a\r\n`,
    );
  });

  it('[X30] any book comes back as it was, into an empty book and into itself', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const text = townRulesToCsv(book);
        const { added, ...rest } = taken(text);
        expect(Object.fromEntries(added.map(({ id, entry }) => [id, entry]))).toEqual(book);
        expect(rest).toEqual({ changed: [], same: 0, refused: [], leftOut: [] });
        expect(taken(text, book).same).toBe(Object.keys(book).length);
      }),
    );
  });

  it('[I30] columns come in any order; a row without a key is of the rule with its town, measure and words', () => {
    const text = `limit,MEASURE,Town,Zone\n42,Fence no higher than,inventedville,R1\n,,Invented Falls,R2\n`;
    const { added, changed, refused, leftOut } = taken(text, { 'town-rule:a': high });
    expect(leftOut).toEqual(['Zone']);
    expect(added).toEqual([]);
    const entry = { ...high, town: 'inventedville', limit: 42, source: '' };
    expect(changed).toEqual([{ line: 2, id: 'town-rule:a', entry }]);
    expect(refused).toEqual([
      { line: 3, reason: 'Words: expected what the town asks, or a measure with its limit' },
    ]);
  });

  it('[I3] [I30] a bad row is named by its line, and the others are taken', () => {
    const rows = [
      'Town,Measure,Limit,Words,Source,Key',
      'Inventedville,gap under fabric no more than,2,,,',
      'Inventedville,fence no taller than,48,,,',
      'Inventedville,fence no higher than,,,,',
      'Inventedville,fence no higher than,four,,,',
      'Inventedville,fence no higher than,-4,,,',
      'Inventedville,,48,,,',
      ' ,fence no higher than,48,,,',
      'Inventedville,,,Ask first,,not_a_key',
      'Inventedville,,,Ask first,,k',
      'Inventedville,,,Ask again,,k',
    ];
    const { added, refused } = taken(rows.join('\n'));
    expect(added.map(({ line, id }) => [line, id])).toEqual([
      [2, 'town-rule:new-1'],
      [10, 'town-rule:k'],
    ]);
    expect(refused.map(({ line, reason }) => `${line}: ${reason}`)).toEqual([
      expect.stringMatching(
        /^3: Measure: expected nothing, fence no higher than, .+; found “fence no taller than”$/,
      ),
      '4: Limit: expected a length for “fence no higher than”',
      expect.stringMatching(/^5: Limit: “four” .+expected a length/),
      '6: Limit: expected 0 or more, found “-4”',
      '7: Limit: expected nothing, or a measure that it limits',
      '8: Town: expected a name',
      '9: Key: expected up to 40 letters, digits and hyphens, found “not_a_key”',
      '11: the same rule as in line 10',
    ]);
  });

  it('[I30] a text that is no such file is refused in one line', () => {
    const read = (text: string) =>
      townRulesFromCsv(text, { book: {}, freshId: () => 'town-rule:new' });
    expect(read('Place;Limit\n')).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/^line 1: expected a header with the columns Town, Measure/),
    });
  });
});
