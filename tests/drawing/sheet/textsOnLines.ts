import { textBox } from '../../../src/drawing/lettering/textBox.ts';
import type { Page } from '../../../src/drawing/sheet/page.ts';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { bearing } from '../../../src/geometry/bearing.ts';
import { boundsOf, boundsOverlap } from '../../../src/geometry/bounds.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { midpoint } from '../../../src/geometry/midpoint.ts';
import { corners } from '../../../src/geometry/orientedBox.ts';
import { textsOf } from '../textsOf.ts';
import { strokesOf, type LineKind, type PageLine } from './strokesOf.ts';

/** A text and the kinds of lines that pass through its box. */
export interface TextOnLines {
  readonly text: string;
  readonly kinds: readonly LineKind[];
}

const stripOf = ({ segment: { start, end }, width }: PageLine) => ({
  centre: midpoint(start, end),
  halfWidth: distance(start, end) / 2,
  halfHeight: width / 2,
  angle: bearing(start, end),
});

const boundsOfAll = (points: Parameters<typeof boundsOf>[0]) =>
  boundsOf(points) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };

/** Every text of a page that a line passes through, each kind of line once. */
export const textsOnLines = (page: Page): TextOnLines[] => {
  const lines = strokesOf(page).map((line) => ({
    kind: line.kind,
    strip: stripOf(line),
    bounds: boundsOfAll(corners(stripOf(line))),
  }));
  return textsOf(pageAtoms(page)).flatMap((text) => {
    const box = textBox(text);
    const bounds = boundsOfAll(corners(box));
    const met = lines.filter(
      (line) => boundsOverlap(line.bounds, bounds) && boxesOverlap(line.strip, box),
    );
    const kinds = [...new Set(met.map(({ kind }) => kind))];
    return kinds.length === 0 ? [] : [{ text: text.text, kinds }];
  });
};
