import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/trade/cautions.ts';

const all = cautions.map(({ text }) => text).join('\n');

describe('cautions', () => {
  it('[T9] begin with the call before digging and the rule it rests on', () => {
    expect(cautions[0]?.text).toMatch(/call before you dig/i);
    expect(cautions[0]?.source?.text).toBe('29 CFR 1926.651(b)');
  });

  it('[T9] defer to codes, a licensed professional and the tape', () => {
    expect(all).toMatch(/local codes/i);
    expect(all).toMatch(/licensed professional/i);
    expect(all).toMatch(/no boundary survey.*licensed land surveyor/i);
    expect(all).toMatch(/measure the width of every leaf/i);
    expect(all).toMatch(/every hinge/i);
    expect(all).toMatch(/approve nothing/i);
  });

  it('[T9] claim nothing', () => {
    expect(all).not.toMatch(/compl(y|ies|iant)|\bsafe|guarantee|certif/i);
  });

  it('are short enough to be read on a sheet, each in whole sentences', () => {
    expect(cautions.filter(({ text }) => text.length > 200 || !text.endsWith('.'))).toEqual([]);
  });
});
