import { describe, expect, it } from 'vitest';
import { takenLabel } from '../../../../src/screens/load/alternatives/takenLabel.ts';

describe('the name of what the plan was', () => {
  it('says what was taken in its place, and taken back is the name again', () => {
    expect(takenLabel('Tall')).toBe('Instead of Tall');
    expect(takenLabel(takenLabel('Tall'))).toBe('Tall');
    expect(takenLabel('Instead of ')).toBe('Instead of Instead of ');
  });

  it('stays where there is no room for more', () => {
    const long = 'x'.repeat(195);
    expect(takenLabel(long)).toBe(long);
    expect(takenLabel('x'.repeat(189))).toHaveLength(200);
  });
});
