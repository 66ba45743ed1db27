import { describe, expect, it } from 'vitest';
import { addTownRule } from '../../../src/site/edits/addTownRule.ts';
import { changeTownRule } from '../../../src/site/edits/changeTownRule.ts';
import { removeTownRule } from '../../../src/site/edits/removeTownRule.ts';
import { takeTownRules } from '../../../src/site/edits/takeTownRules.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { TownRule } from '../../../src/site/townRule.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

/** Of an invented town. */
const high: TownRule = {
  town: 'Inventedville',
  measure: 'fence no higher than',
  limit: inches(48),
  words: '',
  source: 'Invented code 1-2',
};
const worded: TownRule = { ...high, measure: null, limit: null, words: 'Finished side out' };

describe('rules of towns on a site', () => {
  it('[S70] are added, changed and removed, and kept in the file', () => {
    const added = addTownRule(addTownRule(sampleSite, high), worded);
    expect(added.townRules).toEqual({ 'town-rule:1': high, 'town-rule:2': worded });
    const changed = changeTownRule(added, 'town-rule:1', { limit: inches(42) });
    expect(openSite(saveSite(changed))).toEqual({ ok: true, value: changed });
    const back = removeTownRule(removeTownRule(changed, 'town-rule:1'), 'town-rule:2');
    expect(back).toEqual(sampleSite);
    expect(changeTownRule(added, 'town-rule:1', { limit: inches(48) })).toBe(added);
  });

  it.each([
    [{ limit: null }, 'limit: expected a length for “fence no higher than”'],
    [{ measure: null }, 'limit: expected nothing, or a measure that it limits'],
    [{ measure: null, limit: null, words: ' ' }, 'words: expected what the town asks, or a'],
    [{ town: ' ' }, 'town: expected a name'],
    [{ limit: inches(-1) }, 'limit: expected at least 0, found -1'],
  ] as const)('[S70] [S11] %j is refused in one line', (fields, says) => {
    const line = `townRules › town-rule:1 › ${says}`;
    expect(() => addTownRule(sampleSite, { ...high, ...fields })).toThrow(line);
    const site = addTownRule(sampleSite, high);
    expect(() => changeTownRule(site, 'town-rule:1', fields)).toThrow(line);
  });

  it('[S71] a town’s are taken from a book once, the site’s own kept', () => {
    const book = {
      'town-rule:a': high,
      'town-rule:b': worded,
      'town-rule:c': { ...high, town: 'Invented Falls' },
    } as const;
    const taken = takeTownRules(sampleSite, book, ' inventedville');
    expect(taken.townRules).toEqual({ 'town-rule:a': high, 'town-rule:b': worded });
    expect(takeTownRules(taken, book, 'Inventedville')).toBe(taken);

    const own = changeTownRule(taken, 'town-rule:a', { limit: inches(60) });
    expect(takeTownRules(own, book, 'Inventedville')).toBe(own);
    const typed = addTownRule(sampleSite, { ...high, source: 'As typed by hand' });
    expect(Object.keys(takeTownRules(typed, book, 'Inventedville').townRules)).toEqual([
      'town-rule:1',
      'town-rule:b',
    ]);
  });

  it('[S71] [S11] a town that the book lacks is refused in one line', () => {
    expect(() => takeTownRules(sampleSite, { 'town-rule:a': high }, 'Elsewhere')).toThrow(
      'townRules: expected a town of the book, found "Elsewhere"',
    );
  });
});
