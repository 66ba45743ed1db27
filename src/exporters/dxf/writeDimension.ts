import {
  BoundingBox,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  point3d,
  type DxfBlock,
  type DxfWriter,
} from '@tarikjabiri/dxf';
import { readable } from '../../drawing/lettering/readable.ts';
import { bearing } from '../../geometry/bearing.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { distance } from '../../geometry/distance.ts';
import { radians, toDegrees, type Radians } from '../../units/radians.ts';
import { dimensionParts, dimensionStyleName } from './dimensionStyle.ts';
import type { DxfScale } from './dxfScale.ts';
import type { DxfDimension } from './dxfThing.ts';

const layerName = 'DIMENSIONS';

/** A dimension, where its line runs and where the middle of its text lies; ground inches. */
interface Placed extends DxfDimension {
  readonly along: Radians;
  readonly ends: readonly [SitePoint, SitePoint];
  readonly reads: Radians;
  readonly middle: SitePoint;
}

const across = (angle: Radians): Radians => radians(angle + Math.PI / 2);

const placed = (one: DxfDimension, { letter }: DxfScale): Placed => {
  const along = bearing(one.from, one.to);
  const ends = [one.from, one.to].map((at) => moved(at, across(along), one.off));
  const [first = one.from, last = one.to] = ends;
  const reads = readable(along);
  const up = (dimensionParts.gap + 0.5) * letter * (one.stands === 'over' ? 1 : -1);
  const middle = moved(midpoint(first, last), across(reads), up);
  return { ...one, along, ends: [first, last], reads, middle };
};

/** Draws it into a block, for readers that draw no dimensions themselves. */
const draw = (block: DxfBlock, one: Placed, { each, letter }: DxfScale): void => {
  const at = ({ x, y }: SitePoint) => point3d(x * each, y * each, 0);
  const line = (from: SitePoint, to: SitePoint) => block.addLine(at(from), at(to), { layerName });
  const { clear, past, tick } = dimensionParts;
  const out = across(one.along);
  const way = Math.sign(one.off) || 1;
  [one.from, one.to].forEach((from, n) => {
    const to = one.ends[n] ?? from;
    line(moved(from, out, way * clear * letter), moved(to, out, way * past * letter));
    const slant = radians(one.along + Math.PI / 4);
    line(moved(to, slant, -tick * letter), moved(to, slant, tick * letter));
  });
  line(...one.ends);
  block.addText(at(one.middle), letter * each, one.text, {
    layerName,
    rotation: toDegrees(one.reads),
    horizontalAlignment: TextHorizontalAlignment.Center,
    verticalAlignment: TextVerticalAlignment.Middle,
    secondAlignmentPoint: at(one.middle),
  });
};

/** Bits of the sort of a dimension (public DXF reference): aligned, its block its own, its text set by hand. */
const sorts = { aligned: 1, ownBlock: 32, ownPlace: 128 } as const;

/**
 * Writes a dimension as an aligned one with the block that draws it, both numbered `n`. `text` goes in as
 * it is: it has to be fit for a DXF.
 */
export const writeDimension = (
  writer: DxfWriter,
  thing: DxfDimension,
  scale: DxfScale,
  n: number,
): void => {
  const { each } = scale;
  const at = ({ x, y }: SitePoint) => point3d(x * each, y * each, 0);
  const one = placed(thing, scale);
  const blockName = `*D${n}`;
  const block = writer.blocks.addBlock(blockName, writer.document.objects, false);
  Object.assign(block, { flags: 1 });
  draw(block, one, scale);
  const dimension = writer.addAlignedDim(at(one.from), at(one.to), {
    layerName,
    blockName,
    definitionPoint: at(one.ends[1]),
    middlePoint: at(one.middle),
    ActualMeasurement: distance(one.from, one.to) * each,
    text: one.text,
    styleName: dimensionStyleName,
  });
  const box = BoundingBox.lineBBox(at(one.ends[0]), at(one.ends[1]));
  Object.assign(dimension, {
    dimensionType: sorts.aligned + sorts.ownBlock + sorts.ownPlace,
    // what the library has for it is a box at the origin
    boundingBox: () => box,
  });
};
