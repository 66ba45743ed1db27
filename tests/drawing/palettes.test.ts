import { describe, expect, it } from 'vitest';
import type { Ink, Palette } from '../../src/drawing/ink.ts';
import { palettes } from '../../src/drawing/palettes.ts';

/** Relative luminance and contrast as defined in W3C WCAG 2.1 (definitions; 1.4.3 and 1.4.11). */
const luminance = (colour: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

const contrast = (one: string, other: string): number => {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
};

const texts: readonly Ink[] = [
  ...(['text', 'dimension', 'line', 'post', 'gate', 'leaf', 'building', 'boundary'] as const),
  ...(['keep-out', 'water', 'tree', 'stop', 'settle', 'caution', 'selected'] as const),
];
const grounds: readonly Ink[] = ['paper', 'grid', 'tape'];

const below = (palette: Palette, inks: readonly Ink[], least: number): string[] =>
  inks
    .filter((ink) => contrast(palette[ink], palette.paper) < least)
    .map((ink) => `${ink} ${contrast(palette[ink], palette.paper).toFixed(2)}`);

describe.each(Object.entries(palettes))('the %s palette', (_, palette: Palette) => {
  it('[D4] letters stand out from the paper by 4.5 to 1', () => {
    expect(below(palette, texts, 4.5)).toEqual([]);
  });

  it('[D4] letters stand out from the tape by 4.5 to 1', () => {
    expect(contrast(palette.text, palette.tape)).toBeGreaterThan(4.5);
    expect(contrast(palette.gate, palette.tape)).toBeGreaterThan(4.5);
    expect(contrast(palette.dimension, palette.tape)).toBeGreaterThan(4.5);
  });

  it('[D4] every line stands out from the paper by 3 to 1', () => {
    const lines = (Object.keys(palette) as Ink[]).filter((ink) => !grounds.includes(ink));
    expect(below(palette, lines, 3)).toEqual([]);
  });
});

describe('contrast', () => {
  it('is 21 for black on white and 1 for like on like (W3C WCAG 2.1)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#777777', '#777777')).toBeCloseTo(1, 12);
  });
});
