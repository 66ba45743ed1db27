import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { usualBoards } from '../../src/engine/usualBoards.ts';
import { usualPanels } from '../../src/engine/usualPanels.ts';
import { addSpec } from '../../src/site/edits/addSpec.ts';
import { setLineSpec } from '../../src/site/edits/setLineSpec.ts';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { inches } from '../../src/units/inches.ts';
import { bare, fence } from './plainYard.ts';

const drawn = fence(bare, [
  [0, 0],
  [480, 0],
]);

describe('builds of boards and of panels to start from', () => {
  it.each([48, 60, 72, 96])(
    '[P26] %d in high they are sound, and stand without a stop',
    (height) => {
      for (const { id, spec } of [usualBoards(inches(height)), usualPanels(inches(height))]) {
        const site = setLineSpec(addSpec(drawn, id, spec), 'line:1', id);
        expect(openSite(saveSite(site))).toEqual({ ok: true, value: site });
        const { flags, posts } = layOutSite(site);
        expect(flags.filter(({ level }) => level !== 'caution')).toEqual([]);
        expect([...posts.values()].every(({ section }) => section === 'square')).toBe(true);
      }
    },
  );

  it('[P26] there are two rails up to 5 ft, three above: common practice, no published source', () => {
    const rails = (height: number) => {
      const { infill } = usualBoards(inches(height)).spec;
      return infill.kind === 'boards' ? infill.rails : null;
    };
    expect([48, 60, 61, 72].map(rails)).toEqual([2, 2, 3, 3]);
  });
});
