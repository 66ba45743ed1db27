import { describe, expect, it } from 'vitest';
import { typedRule, type TypedRule } from '../../../src/screens/townRules/typedRule.ts';
import type { LengthStyle } from '../../../src/units/lengthStyle.ts';

const feet: LengthStyle = { system: 'feet', fraction: 16 };

const typed: TypedRule = {
  town: ' Inventedville ',
  measure: 'fence no higher than',
  limit: '48',
  words: ' ',
  source: '',
};

const faultOf = (fields: Partial<TypedRule>): string => {
  const found = typedRule({ ...typed, ...fields }, feet);
  return found.ok ? '' : found.reason;
};

describe('a rule of a town as it is typed', () => {
  it('takes a bare limit as inches, or millimetres on a metric site', () => {
    const found = typedRule(typed, feet);
    expect(found).toEqual({
      ok: true,
      value: { ...typed, town: 'Inventedville', limit: 48, words: '' },
    });
    expect(typedRule({ ...typed, limit: '1219.2' }, { system: 'm', fraction: 16 })).toMatchObject({
      value: { limit: 48 },
    });
  });

  it('forgets a limit that was typed before the rule was put in words alone', () => {
    const worded = { ...typed, measure: null, limit: 'high', words: 'Ask' };
    expect(typedRule(worded, feet)).toMatchObject({ value: { measure: null, limit: null } });
  });

  it.each([
    [{ town: ' ' }, 'Town: expected a name'],
    [{ limit: '' }, 'Limit: expected a length for “fence no higher than”'],
    [{ limit: '-1' }, 'Limit: expected 0 or more, found “-1”'],
    [{ limit: 'high' }, 'Limit: “high”'],
    [{ measure: null }, 'In words: expected what the town asks'],
    [{ source: 'x'.repeat(201) }, 'Expected 200 characters at most'],
  ])('answers %j in one line', (fields, says) => {
    expect(faultOf(fields)).toContain(says);
    expect(faultOf(fields)).not.toContain('\n');
  });
});
