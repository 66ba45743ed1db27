import { describe, expect, it } from 'vitest';
import { drawOnPaper } from '../../../src/drawing/drawOnPaper.ts';
import { drawFeature } from '../../../src/drawing/plan/drawFeature.ts';
import { textWidth } from '../../../src/drawing/textWidth.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import type { Feature } from '../../../src/site/feature.ts';
import { inches } from '../../../src/units/inches.ts';
import { handPath } from '../handYard.ts';

const square = handPath(
  [
    { x: 0, y: 0 },
    { x: 360, y: 0 },
    { x: 360, y: 240 },
    { x: 0, y: 240 },
  ],
  'a',
);
const site = { ...emptySite({ specs: {}, hardware: {} }), marks: square.marks };
const { path } = square;
const textsFor = (feature: Feature): string[] =>
  drawFeature(feature, site).flatMap((one) => (one.kind === 'text' ? [one.text] : []));

describe('drawFeature', () => {
  it('[D15] a building is hatched, named and has the length of every wall', () => {
    const house: Feature = { kind: 'building', label: 'House', path };
    expect(textsFor(house)).toEqual(['30\'-0"', '20\'-0"', '30\'-0"', '20\'-0"', 'House']);
    const [ground] = drawFeature(house, site);
    expect(ground).toMatchObject({ kind: 'area', hatch: 'diagonal' });
  });

  it('[D36] the length of a wall that finds no room is named with its building', () => {
    const house: Feature = { kind: 'building', label: 'House', path };
    const tiny = { origin: { x: 0, y: 0 }, scale: 1 / 2400 };
    const { left } = drawOnPaper(drawFeature(house, site), tiny);
    expect(left).toContain('House side 20\'-0"');
  });

  it('[D15] a utility is drawn with its zone on both sides and named by what it carries', () => {
    const line = handPath(
      [
        { x: 0, y: 0 },
        { x: 240, y: 0 },
      ],
      'a',
    );
    const gas: Feature = {
      kind: 'utility',
      run: 'buried',
      label: '',
      service: 'gas',
      width: inches(2),
      tolerance: inches(18),
      path: line.path,
    };
    const [zone, pipe] = drawFeature(gas, site);
    if (zone?.kind !== 'area') throw new Error('expected the zone first');
    // 18 in on each side of a 2 in pipe
    expect(zone.points.map(({ y }) => Math.abs(y))).toEqual([19, 19, 19, 19]);
    expect(pipe).toMatchObject({ kind: 'polyline', pen: 'gas' });
    expect(textsFor(gas)).toEqual(['gas']);
  });

  it('[D15] a note is written in lines that fit, cut after the fourth', () => {
    const text = 'The dog is out on weekdays until five, so please shut the side gate. '.repeat(3);
    const [note] = textsFor({ kind: 'note', label: 'Dog', mark: 'mark:a-0', text });
    const lines = note?.split('\n') ?? [];
    expect(lines).toHaveLength(4);
    expect(lines[0]).toBe('Dog');
    expect(lines[3]).toBe('…');
    for (const line of lines) expect(textWidth(line, 0.15, 'regular')).toBeLessThanOrEqual(1.9);
  });

  it('draws nothing at a mark that is not there, and nothing round no points', () => {
    const lost = 'mark:lost' as const;
    expect(drawFeature({ kind: 'note', label: 'x', mark: lost, text: '' }, site)).toEqual([]);
    expect(textsFor({ kind: 'pool', label: 'Pool', path: {} })).toEqual([]);
  });
});
