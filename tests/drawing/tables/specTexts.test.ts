import { describe, expect, it } from 'vitest';
import { specTexts } from '../../../src/drawing/tables/specTexts.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleYards } from '../sampleYards.ts';

const site = sampleYards.find(({ name }) => name === 'corner-lot')?.site;
if (site === undefined) throw new Error('expected the corner lot');

describe('specTexts', () => {
  it('[D32] says how high fabric and posts stand, once where all lines are alike', () => {
    expect(specTexts(site)).toEqual([
      'Fence: fabric 4\'-0" high; line posts end 2" below the top of the fabric, all others 2" above the top of the fabric.',
    ]);
  });

  it('[D32] names the lines where they differ', () => {
    const [id, spec] = Object.entries(site.specs)[0] ?? [];
    const [own, line] = Object.entries(site.lines)[0] ?? [];
    if (id === undefined || spec === undefined || own === undefined || line === undefined)
      throw new Error('expected a line with a spec');
    const high = { ...spec, fabricHeight: inches(120), lineAbove: inches(0) };
    const two = {
      ...site,
      specs: { ...site.specs, 'spec:high': high },
      lines: { ...site.lines, [own]: { ...line, spec: 'spec:high' } },
    } as Site;
    const texts = specTexts(two).toSorted();
    expect(texts).toHaveLength(2);
    const said = texts.find((text) => text.startsWith(`${line.label}: `));
    expect(said).toContain('fabric 10\'-0" high; line posts end level with the top');
  });

  it('[D32] says nothing of a spec that the site lacks', () => {
    expect(specTexts({ ...site, specs: {} })).toEqual([]);
  });
});
