import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const css = readFileSync('src/screens/theme.css', 'utf8');

/** The colours of a light, by their names. */
const coloursOf = (light: string): ReadonlyMap<string, string> => {
  const block = css.split(`[data-theme='${light}'] {`)[1]?.split('}')[0] ?? '';
  return new Map(
    [...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, hex]) => [
      name ?? '',
      hex ?? '',
    ]),
  );
};

/** Relative luminance of an sRGB colour; source: WCAG 2.2, definition of relative luminance. */
const luminance = (hex: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** Source: WCAG 2.2, definition of contrast ratio. */
const contrast = (one: string, other: string): number => {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
};

const files = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? files(join(folder, entry.name)) : [join(folder, entry.name)],
  );

describe.each(['day', 'dark', 'sun'])('the light %s', (light) => {
  const colours = coloursOf(light);
  const on = (line: string, ground: string): number =>
    contrast(colours.get(line) ?? '', colours.get(ground) ?? '');

  // source: WCAG 2.2, 1.4.11 and 2.4.13: 3 to 1 for focus rings and the edges of controls
  it.each([
    ['chalk', 'sheet'],
    ['chalk', 'sheet-2'],
    ['chalk', 'field'],
    ['field-edge', 'sheet'],
    ['field-edge', 'sheet-2'],
  ])('shows %s on %s at 3 to 1 or more', (line, ground) => {
    expect(on(line, ground)).toBeGreaterThanOrEqual(3);
  });

  it('shows the ring of the board at 3 to 1 or more', () => {
    const ring = /\.board :focus-visible \{\s*outline-color: (#[0-9a-f]{6})/.exec(css)?.[1] ?? '';
    expect(contrast(ring, colours.get('board') ?? '')).toBeGreaterThanOrEqual(3);
  });

  // source: WCAG 2.2, 1.4.3: 4.5 to 1 for text
  it.each(['text', 'quiet', 'stop', 'settle', 'caution', 'fault'])(
    'writes %s at 4.5 to 1 or more',
    (ink) => {
      for (const ground of ['sheet', 'sheet-2'])
        expect(on(ink, ground)).toBeGreaterThanOrEqual(4.5);
    },
  );
});

it('measures black on white as 21 to 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
});

it('moves nothing by itself, so that whoever asks for reduced motion has it', () => {
  const moving = files('src')
    .filter((file) => /\.(css|tsx?)$/.test(file))
    .filter((file) =>
      /^\s*(transition|animation|scroll-behavior)[\w-]*:|behavior: 'smooth'|\.animate\(/m.test(
        readFileSync(file, 'utf8'),
      ),
    );
  expect(moving).toEqual([]);
});
