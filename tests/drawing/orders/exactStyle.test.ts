import { describe, expect, it } from 'vitest';
import { exactStyle } from '../../../src/drawing/orders/exactStyle.ts';

describe('exactStyle', () => {
  it('[D46] keeps the style of the site where it writes every length as it is', () => {
    const eighths = { system: 'feet', fraction: 8 } as const;
    expect(exactStyle([56.25, 44], eighths)).toEqual(eighths);
    expect(exactStyle([56.25, 44.0625], eighths)).toEqual({ system: 'feet', fraction: 32 });
    expect(exactStyle([1 / 3], { system: 'm', fraction: 8 }).system).toBe('mm');
  });
});
