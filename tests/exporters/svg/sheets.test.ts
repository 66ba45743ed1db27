import { describe, expect, it } from 'vitest';
import { layerNames } from '../../../src/drawing/layerNames.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { toSvg } from '../../../src/exporters/svg/toSvg.ts';
import { samples } from '../samples.ts';
import { scene } from '../scene.ts';
import { svgFault } from './svgFault.ts';

const [sample] = samples;
if (sample === undefined) throw new Error('expected a sample');
const pages = sheetSet(sample.site, sample.layout, { paper: 'letter', siteText: '' });

const groupsIn = (svg: string) =>
  [...svg.matchAll(/^<g id="([^"]+)" data-layer="([^"]+)">$/gm)].map(([, id = '', layer = '']) => ({
    id,
    layer,
  }));

describe('the SVG of sheets', () => {
  it('[X61] has each layer as a group of its name, in the order in which it is painted', () => {
    for (const page of pages) {
      const groups = groupsIn(toSvg(page));
      expect(groups.map(({ layer }) => layer)).toEqual(page.layers.map(({ name }) => name));
      groups.forEach(({ id, layer }) => expect(id.replace(/-\d+$/, '')).toBe(layer));
    }
    const names = new Set(pages.flatMap((page) => groupsIn(toSvg(page)).map(({ layer }) => layer)));
    expect([...names].toSorted()).toEqual([...layerNames].toSorted());
  });

  it('[X61] no id stands twice, and what clips is there', () => {
    for (const page of pages) {
      const svg = toSvg(page);
      const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
    }
  });

  it('[X61] is well-formed by the parser of another program', async () => {
    for (const page of pages) expect(await svgFault(toSvg(page))).toBeNull();
  });

  it('[X61] characters that XML has no place for are replaced, and the parser would have told', async () => {
    const bad = '\u0000\u0008\u001f\ufffe\ud800]]>&lt;<script>';
    expect(await svgFault(toSvg({ ...scene, title: bad }))).toBeNull();
    expect(toSvg({ ...scene, title: bad })).toContain(
      '<title>?????]]&gt;&amp;lt;&lt;script&gt;</title>',
    );
    expect(
      await svgFault(`<svg xmlns="http://www.w3.org/2000/svg"><title>\u0008</title></svg>`),
    ).toMatch(/non-XML character/);
    expect(await svgFault('<svg xmlns="http://www.w3.org/2000/svg"><g></svg>')).not.toBeNull();
  });
});
