import { letterExtent, textBox } from '../../src/drawing/lettering/textBox.ts';
import { pageAtoms } from '../../src/drawing/sheet/pageAtoms.ts';
import type { Page } from '../../src/drawing/sheet/page.ts';
import { sheetFrame } from '../../src/drawing/sheet/sheetFrame.ts';
import { corners } from '../../src/geometry/orientedBox.ts';
import { overlapsOf, textsOf } from './textsOf.ts';

/** What is wrong with the lettering of a page: texts over one another, out of its frame, too small. */
export const letteringFaults = (page: Page): string[] => {
  const { title, paper } = page;
  const atoms = pageAtoms(page);
  const { outer } = sheetFrame(paper);
  const texts = textsOf(atoms);
  const out = texts.filter((text) =>
    corners(textBox(text)).some(
      ({ x, y }) =>
        x < outer.x || x > outer.x + outer.width || y < outer.y || y > outer.y + outer.height,
    ),
  );
  // 3/32 in is the least height of letters (US National CAD Standard, from memory)
  const small = texts.filter(({ size }) => size * letterExtent.capital < 3 / 32);
  return [
    ...overlapsOf(atoms).map((pair) => `${title}: ${pair}`),
    ...out.map(({ text }) => `${title}: ${text} leaves the frame`),
    ...small.map(({ text }) => `${title}: ${text} is too small`),
  ];
};
