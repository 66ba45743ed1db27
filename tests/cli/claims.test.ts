import { describe, expect, it } from 'vitest';
import { sheetSet } from '../../src/drawing/sheet/sheetSet.ts';
import { setConditions } from '../../src/site/edits/setConditions.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { inches } from '../../src/units/inches.ts';
import { lath } from './lath.ts';
import { sampleSites } from './sampleSites.ts';

const claim = /\b(?:compl(?:y|ies|iant|iance)|safe)\b/i;

describe('what is said of a plan', () => {
  it.each(sampleSites)(
    '[K23] nothing of $name says that it complies or is safe',
    async ({ text }) => {
      const files = { yard: text };
      for (const verb of ['layout', 'load', 'compare', 'flags', 'survey']) {
        const said = await lath([verb, 'yard'], files);
        expect(said.err).toBe('');
        expect(said.out).not.toMatch(claim);
      }
      const opened = openSite(files.yard);
      if (!opened.ok) throw new Error(opened.reason);
      const windy = setConditions(opened.value, {
        wind: { speed: 120, exposure: 'D' },
        frost: inches(40),
      });
      const options = { paper: 'letter', siteText: saveSite(windy) } as const;
      const pages = JSON.stringify(sheetSet(windy, layOutSite(windy), options));
      expect(pages).toContain('licensed');
      expect(pages).not.toMatch(claim);
    },
  );

  it('[K23] nor do the single checks', async () => {
    const wind = await lath(['wind', '--fabric', '6ft', '--post', '2.375', '--speed', '90']);
    const hole = await lath(['footing', '--post', '2.375', '--fabric', '6ft', '--frost', '30']);
    for (const { out } of [wind, hole]) {
      expect(out).toContain('They approve nothing');
      expect(out).not.toMatch(claim);
    }
  });
});
