import { describe, expect, it } from 'vitest';
import { gradeText, readGrade } from '../../../../src/screens/yard/cards/readGrade.ts';

describe('readGrade', () => {
  it('reads percent as rise over run, and nothing as none', () => {
    expect(readGrade('15')).toEqual({ ok: true, value: 0.15 });
    expect(readGrade(' 12.5 % ')).toEqual({ ok: true, value: 0.125 });
    expect(readGrade('  ')).toEqual({ ok: true, value: null });
    expect(readGrade('0')).toEqual({ ok: true, value: 0 });
  });

  it('refuses in one line what is no percent from 0 to 100', () => {
    for (const text of ['101', '-5', 'steep', '1/8']) {
      const grade = readGrade(text);
      expect(grade.ok).toBe(false);
      expect(grade.ok ? '' : grade.reason).toContain(text);
      expect(grade.ok ? '' : grade.reason).toContain('expected percent from 0 to 100');
    }
  });

  it('reads what it writes, to a tenth', () => {
    expect(gradeText(1 / 3)).toBe('33.3 %');
    expect(readGrade(gradeText(0.15))).toEqual({ ok: true, value: 0.15 });
  });
});
