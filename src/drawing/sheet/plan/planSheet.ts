import { expandBounds, type Bounds } from '../../../geometry/bounds.ts';
import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import type { Atom } from '../../atom.ts';
import { drawOnPaper } from '../../drawOnPaper.ts';
import { rectangleOutline } from '../../explode/polylineOutline.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { pens } from '../../pens.ts';
import { drawPlan } from '../../plan/drawPlan.ts';
import type { Primitive } from '../../primitive.ts';
import type { Projection } from '../../projection.ts';
import { textWidth } from '../../textWidth.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Rect } from '../rect.ts';
import { fittingScale, scalesOf, type Scale } from '../scales.ts';
import { barScale } from './barScale.ts';
import { graphPaper } from './graphPaper.ts';
import { groundBounds } from './groundBounds.ts';
import { legend } from './legend.ts';
import { northArrow } from './northArrow.ts';
import { roundStep } from './roundStep.ts';

/** A plan on a sheet: its atoms, the scale that it came to, and the texts that found no room. */
export interface PlanSheet {
  readonly atoms: readonly Atom[];
  readonly scale: Scale;
  readonly left: readonly string[];
}

/** Room round the ground for chains of dimensions, and the height of the row under the plan. */
const forChains = 0.85;
const footHeight = 0.62;
/** Room over and under the key. */
const beforeKey = 0.05;
/** Lines of the graph paper are at least so far apart on the paper, inches. */
const leastSquare = 0.2;

const nowhere: Bounds = { minX: 0, minY: 0, maxX: 0, maxY: 0 };

const windowOf = ({ x, y, width, height }: Rect): Bounds => ({
  minX: x,
  minY: y,
  maxX: x + width,
  maxY: y + height,
});

/** The projection that puts the middle of the ground in the middle of the window. */
const centred = (ground: Bounds, window: Rect, ratio: number): Projection => ({
  origin: {
    x: (ground.minX + ground.maxX) / 2 - (window.x + window.width / 2) * ratio,
    y: (ground.minY + ground.maxY) / 2 + (window.y + window.height / 2) * ratio,
  },
  scale: 1 / ratio,
});

/** The scale of a plan of `primitives` in a window of the paper. */
const scaleFor = (primitives: readonly Primitive[], window: Rect, site: Site): Scale => {
  const { minX, minY, maxX, maxY } = groundBounds(primitives) ?? nowhere;
  const room = { width: window.width - 2 * forChains, height: window.height - 2 * forChains };
  return fittingScale(
    scalesOf(site.lengths.system),
    { width: maxX - minX, height: maxY - minY },
    room,
  );
};

/** North arrow, bar scale, scale in words, and what the numbers mean, in the row under the plan. */
const foot = (row: Rect, scale: Scale, site: Site): Atom[] => {
  const { system } = site.lengths;
  const bar = barScale(1 / scale.ratio, system);
  const square = roundStep(leastSquare * scale.ratio, system);
  const middle = row.y + row.height / 2;
  const barX = row.x + 0.75;
  const wordsX = barX + bar.width + 0.55;
  const words = `Scale ${scale.text}. One square is ${square.text}.`;
  const rule =
    'Chains run from centre to centre of posts; openings are clear, from inside face to inside face.';
  const room = row.x + row.width - wordsX;
  const fits = textWidth(rule, letters.small, 'regular') <= room;
  const lines = fits
    ? [rule]
    : [rule.slice(0, rule.indexOf(';') + 1), rule.slice(rule.indexOf(';') + 2)];
  const top = middle - 0.1 * lines.length;
  return [
    ...moveAtoms(northArrow(), row.x + 0.25, middle + 0.08),
    ...moveAtoms(bar.atoms, barX, middle + 0.06),
    ...lineOfText(words, wordsX, top, { weight: 'bold', width: room }),
    ...lines.flatMap((line, n) =>
      lineOfText(line, wordsX, top + 0.2 * (n + 1), { size: letters.small, width: room }),
    ),
  ];
};

/** The part of a sheet's content that the ground is drawn in: the key and the foot lie under it. */
const windowIn = (site: Site, layout: Layout, content: Rect): Rect => {
  const key = legend(site, layout, content.width, layout.flags.length > 0 ? 1 : null);
  return { ...content, height: content.height - footHeight - key.height - 2 * beforeKey };
};

/**
 * The plan of a site in the content of a sheet, on graph paper, to the largest standard scale that
 * fits; ground that none fits is drawn to the smallest and cut off at the edge. The key to its signs
 * is `planKey`.
 */
export const planSheet = (site: Site, layout: Layout, content: Rect): PlanSheet => {
  const primitives = drawPlan(site, layout, { tapes: 'printed' });
  const window = windowIn(site, layout, content);
  const scale = scaleFor(primitives, window, site);
  const projection = centred(groundBounds(primitives) ?? nowhere, window, scale.ratio);
  const bounds = windowOf(window);
  const { atoms, left } = drawOnPaper(primitives, projection, {
    window: expandBounds(bounds, -0.05),
  });
  const edge = rectangleOutline(window, window.width, window.height);
  const square = roundStep(leastSquare * scale.ratio, site.lengths.system);
  const paper = graphPaper(bounds, projection, square.size);
  const row = { ...window, y: window.y + window.height, height: footHeight };
  return {
    atoms: [
      { do: 'clip', outline: edge, atoms: [...paper, ...atoms] },
      { do: 'stroke', pen: pens.thin, outline: edge },
      ...foot(row, scale, site),
    ],
    scale,
    left,
  };
};

/** The scale that a plan would come to in a content of a sheet. */
export const planScale = (site: Site, layout: Layout, content: Rect): Scale =>
  scaleFor(drawPlan(site, layout), windowIn(site, layout, content), site);

/**
 * The key to the signs of a plan, at the foot of the content of its sheet. `flagSheet` is the
 * number of the sheet that lists the flags; null where there are none.
 */
export const planKey = (
  site: Site,
  layout: Layout,
  content: Rect,
  flagSheet: number | null,
): Atom[] => {
  const { atoms, height } = legend(site, layout, content.width, flagSheet);
  return moveAtoms(atoms, content.x, content.y + content.height - height - beforeKey);
};
