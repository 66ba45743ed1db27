import type { Atom, Stroke } from '../../../src/drawing/atom.ts';
import type { Outline } from '../../../src/drawing/outline.ts';
import type { LayerName } from '../../../src/drawing/layerNames.ts';
import type { Page } from '../../../src/drawing/sheet/page.ts';
import { arcPoints } from '../../../src/geometry/arcPoints.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { lerp } from '../../../src/geometry/lerp.ts';
import { piecesInside } from '../../../src/geometry/piecesInside.ts';
import type { PaperPoint } from '../../../src/geometry/point.ts';
import type { Segment } from '../../../src/geometry/segment.ts';
import { radians } from '../../../src/units/radians.ts';

/** What a line on a page is of. */
export type LineKind =
  | ('fence' | 'post' | 'gate' | 'building' | 'dimension' | 'flag')
  | ('hatch' | 'swing' | 'yard' | 'graph paper' | 'sheet');

/** A straight piece of a line as far as it shows, paper inches. */
export interface PageLine {
  readonly kind: LineKind;
  readonly width: number;
  readonly segment: Segment<'paper'>;
}

type Lines = readonly (readonly PaperPoint[])[];

/** How far a straight piece may lie off the arc that it stands for, paper inches. */
const offArc = 0.002;

/** The straight pieces of an outline, arcs in short ones. */
const linesOf = (outline: Outline): Lines => {
  const lines: PaperPoint[][] = [];
  for (const step of outline) {
    const line = lines.at(-1) ?? [];
    if (step.go === 'move') lines.push([{ x: step.x, y: step.y }]);
    else if (step.go === 'line') line.push({ x: step.x, y: step.y });
    else if (step.go === 'close') line.push(...line.slice(0, 1));
    else if (step.go === 'arc') {
      const { x, y, radius, start, sweep } = step;
      // paper has y down: an arc counter-clockwise as seen runs the other way
      const turned = { centre: { x, y }, radius, start: radians(-start), sweep: radians(-sweep) };
      line.push(...arcPoints<'paper'>(turned, offArc));
      if (lines.length === 0) lines.push(line);
    }
  }
  return lines;
};

const segmentsIn = (outline: Outline): Segment<'paper'>[] =>
  linesOf(outline).flatMap((points) =>
    points.slice(1).map((end, n) => ({ start: points[n] ?? end, end })),
  );

/** A hatch line of a piece of ground is so thin. */
const hatchWidth = 0.004;

const kindOf = ({ pen }: Stroke, layer: LayerName): LineKind => {
  const { ink, width, dash } = pen;
  if (ink === 'grid') return 'graph paper';
  if (width <= hatchWidth) return 'hatch';
  if (layer === 'sheet') return ink === 'ghost' ? 'yard' : 'sheet';
  if (layer === 'flags' && ink !== 'dimension') return 'flag';
  if (ink === 'fence' || ink === 'building' || ink === 'dimension' || ink === 'gate') return ink;
  if (ink === 'stop') return 'gate';
  if (ink === 'leaf') return dash.length > 0 ? 'swing' : 'gate';
  if (layer === 'fence' && (ink === 'line' || ink === 'post')) return 'post';
  // circles of bubbles
  if (layer === 'names' && ink === 'line') return 'dimension';
  return 'yard';
};

const within = (segment: Segment<'paper'>, clips: readonly Outline[]): Segment<'paper'>[] =>
  clips.reduce<Segment<'paper'>[]>(
    (kept, clip) =>
      kept.flatMap((one) => {
        const length = distance(one.start, one.end) || 1;
        return piecesInside(one, linesOf(clip)[0] ?? []).map(({ from, to }) => ({
          start: lerp(one.start, one.end, from / length),
          end: lerp(one.start, one.end, to / length),
        }));
      }),
    [segment],
  );

const strokes = (atoms: readonly Atom[], layer: LayerName, clips: readonly Outline[]): PageLine[] =>
  atoms.flatMap((atom): PageLine[] => {
    if (atom.do === 'clip') return strokes(atom.atoms, layer, [...clips, atom.outline]);
    if (atom.do !== 'stroke') return [];
    const kind = kindOf(atom, layer);
    return segmentsIn(atom.outline)
      .flatMap((segment) => within(segment, clips))
      .map((segment) => ({ kind, width: atom.pen.width, segment }));
  });

/** Every line of a page in straight pieces, as far as what it is clipped to lets it show. */
export const strokesOf = ({ layers }: Pick<Page, 'layers'>): PageLine[] =>
  layers.flatMap(({ name, atoms }) => strokes(atoms, name, []));
