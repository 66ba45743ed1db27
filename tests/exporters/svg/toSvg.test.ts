import { describe, expect, it } from 'vitest';
import { textWidth } from '../../../src/drawing/textWidth.ts';
import { toSvg } from '../../../src/exporters/svg/toSvg.ts';
import { scene } from '../scene.ts';

describe('toSvg', () => {
  const svg = toSvg(scene);

  it('[X4] is as large as the paper', () => {
    expect(svg).toContain('width="8.5in" height="11in" viewBox="0 0 8.5 11"');
  });

  it('[X4] takes no text for markup', () => {
    expect(svg).toContain('>Größe ≤ 3 &amp; &lt;b&gt;</text>');
    expect(svg).toContain('<title>Scene &amp; all</title>');
  });

  it('[X4] draws a quarter to the right and down as seen: clockwise', () => {
    expect(svg).toContain('d="M1 1L3 1L3 1A1 1 0 0 1 4 2"');
  });

  it('[X4] draws a whole circle in two halves, clipped by its outline', () => {
    expect(svg).toContain('M3 3.5L3 3.5A1 1 0 0 0 1 3.5A1 1 0 0 0 3 3.5Z');
    expect(svg).toMatch(/<clipPath id="(clip-[\d-]+)">[^]*<g clip-path="url\(#\1\)">/);
  });

  it('[X4] gives each text the width that the sheet was laid out with', () => {
    const width = Number(textWidth('Lane side', 0.2, 'regular').toFixed(4));
    expect(svg).toContain(`textLength="${width}" lengthAdjust="spacingAndGlyphs"`);
  });

  it('[X4] turns text counter-clockwise', () => {
    expect(svg).toMatch(/translate\(1 7\) rotate\(-90\)".*text-anchor="middle"/);
  });
});
