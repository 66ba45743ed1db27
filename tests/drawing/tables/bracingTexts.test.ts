import { describe, expect, it } from 'vitest';
import { bracingTexts } from '../../../src/drawing/tables/bracingTexts.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { usualBoards } from '../../../src/engine/usualBoards.ts';
import { usualPanels } from '../../../src/engine/usualPanels.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';

const yard = fence(bare, [
  [0, 0],
  [1200, 0],
]);

const said = (fields: Partial<FenceSpec>) => {
  const site = changeSpec(yard, 'spec:six', fields);
  return bracingTexts(site, layOutSite(site));
};

describe('how terminals are braced', () => {
  it('[D84] a brace rail without a top rail and from 6 ft on, else the top rail in its place', () => {
    expect(said({})[0]).toMatch(/^6 ft: terminals braced to the next post, with a brace rail \(/);
    expect(said({ fabricHeight: inches(60) })[0]).toMatch(/its top rail in place of a brace rail/);
    expect(said({ fabricHeight: inches(60), topRail: null })[0]).toMatch(
      /since it has no top rail/,
    );
    expect(said({}).at(-1)).toMatch(/^Braces: .*Caltrans 80-3\.03; .*Tremonton/);
  });

  it('[D84] nothing of a site without a fence', () => {
    expect(bracingTexts(bare, layOutSite(bare))).toEqual([]);
  });

  it('[D84] nothing of boards and panels, which pull on no terminal', () => {
    expect(said(usualBoards(inches(72)).spec)).toEqual([]);
    expect(said(usualPanels(inches(72)).spec)).toEqual([]);
  });
});
