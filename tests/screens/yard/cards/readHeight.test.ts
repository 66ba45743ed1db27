import { describe, expect, it } from 'vitest';
import { readHeight } from '../../../../src/screens/yard/cards/readHeight.ts';

describe('readHeight', () => {
  it('reads a height over or below the datum, a bare number in the unit of the site', () => {
    expect(readHeight(' +1.5', 'decimal feet')).toEqual({ ok: true, value: 18 });
    expect(readHeight('-6', 'inches')).toEqual({ ok: true, value: -6 });
    expect(readHeight('+254', 'mm')).toEqual({ ok: true, value: 10 });
  });

  it('refuses what is no length, quoting it', () => {
    const height = readHeight('high', 'feet');
    expect(height).toMatchObject({ ok: false, reason: expect.stringContaining('high') as string });
  });
});
