import { describe, expect, it } from 'vitest';
import { governingText } from '../../../../src/screens/yard/cards/governingText.ts';
import { inches } from '../../../../src/units/inches.ts';

const text = (top: number, middle: number | null, bottom: number | null) =>
  governingText(
    {
      top: inches(top),
      middle: middle === null ? null : inches(middle),
      bottom: bottom === null ? null : inches(bottom),
    },
    { system: 'inches', fraction: 8 },
  );

describe('governingText', () => {
  it('says which width governs where they differ', () => {
    expect(text(56, null, 56.25)).toBe('56 1/4" at the bottom governs: the largest has to go in.');
    expect(text(56, 57, 56)).toContain('57" in the middle governs');
    expect(text(58, 57, null)).toContain('58" at the top governs');
  });

  it('says nothing of one width, or of widths alike', () => {
    expect(text(56, null, null)).toBeNull();
    expect(text(56, 56, 56)).toBeNull();
  });
});
