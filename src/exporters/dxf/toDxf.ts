import { Colors, DxfWriter, LWPolylineFlags, Units, point2d, point3d } from '@tarikjabiri/dxf';
import type { Layout } from '../../engine/layout.ts';
import { distance } from '../../geometry/distance.ts';
import type { Site } from '../../site/site.ts';
import { toDegrees, radians } from '../../units/radians.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { dimensionStyle, dimensionStyleName, lengthUnits } from './dimensionStyle.ts';
import { dimensionThings } from './dimensionThings.ts';
import { dxfLayerNames, dxfLayers } from './dxfLayers.ts';
import { dxfLineTypes, type DxfDashes } from './dxfLineTypes.ts';
import { dxfScale, type DxfScale } from './dxfScale.ts';
import { dxfText } from './dxfText.ts';
import type { DxfCorner, DxfThing } from './dxfThing.ts';
import { fenceThings } from './fenceThings.ts';
import { groundThings } from './groundThings.ts';
import { writeDimension } from './writeDimension.ts';
import { writeLineType } from './writeLineType.ts';

/** Half a chord times its bulge is its middle ordinate; above 0 it goes round counter-clockwise. */
const bulged = ({ at, bow }: DxfCorner, next: DxfCorner | undefined, each: number) => {
  const chord = next === undefined ? 0 : distance(at, next.at);
  const point = point2d(at.x * each, at.y * each);
  return bow === 0 || chord === 0 ? { point } : { point, bulge: (-2 * bow) / chord };
};

const degrees = (angle: number): number => {
  const turned = toDegrees(radians(angle)) % 360;
  return turned < 0 ? turned + 360 : turned;
};

/** Line types go on round the corners of a polyline (public DXF reference, LWPOLYLINE group 70). */
const roundCorners = LWPolylineFlags.Plinegen;

const write = (writer: DxfWriter, thing: DxfThing, scale: DxfScale, n: number): void => {
  const options = { layerName: thing.layer };
  const { each, letter } = scale;
  const point = ({ x, y }: SitePoint) => point3d(x * each, y * each);
  switch (thing.kind) {
    case 'path': {
      const { corners, closed, line: lineType } = thing;
      const flags = roundCorners + (closed ? LWPolylineFlags.Closed : LWPolylineFlags.None);
      const points = corners.map((one, k) => bulged(one, corners[k + 1] ?? corners[0], each));
      const own = lineType === undefined ? {} : { lineType };
      writer.addLWPolyline(points, { ...options, ...own, flags });
      return;
    }
    case 'circle':
      writer.addCircle(point(thing.at), thing.radius * each, options);
      return;
    case 'arc': {
      const ends = [thing.start, thing.start + thing.sweep].map(degrees);
      const [from = 0, to = 0] = thing.sweep < 0 ? ends.toReversed() : ends;
      writer.addArc(point(thing.at), thing.radius * each, from, to, options);
      return;
    }
    case 'point':
      writer.addPoint(thing.at.x * each, thing.at.y * each, thing.z * each, options);
      return;
    case 'text':
      writer.addMText(point(thing.at), letter * each, dxfText(thing.text), options);
      return;
    case 'dimension':
      writeDimension(writer, { ...thing, text: dxfText(thing.text) }, scale, n);
  }
};

/** Units of the file and of what is written of it, the scale of dashes, lines by name, layers. */
const setUp = (writer: DxfWriter, site: Site, scale: DxfScale): void => {
  const { unit, each, ratio, letter } = scale;
  const metric = unit === 'millimetres';
  writer.setUnits(metric ? Units.Millimeters : Units.Inches);
  writer.setVariable('$MEASUREMENT', { 70: metric ? 1 : 0 });
  writer.setVariable('$LUNITS', { 70: lengthUnits[site.lengths.system] });
  writer.setVariable('$LTSCALE', { 40: ratio * each });
  writer.setVariable('$TEXTSIZE', { 40: letter * each });
  writer.setVariable('$DIMSTYLE', { 2: dimensionStyleName });
  writer.setVariable('$LASTSAVEDBY', { 1: 'Lathline' });
  for (const [name, dashes] of Object.entries<DxfDashes>(dxfLineTypes)) {
    writeLineType(writer, name, dashes);
  }
  for (const name of dxfLayerNames) {
    const { colour, line } = dxfLayers[name];
    writer.addLayer(name, colour as Colors, line);
  }
  dimensionStyle(writer, scale, site.lengths.system);
};

/**
 * A site as a DXF of the ground at its true size, x east, y north, in the unit of `dxfScale`: fence lines
 * with their curves and the bays on them, posts at their actual outside diameter, holes, gates open and the
 * ground that they swing over, dimensions, features, marks and grade shots, each on the layer that `dxfLayers` names. Gates
 * that do not fit are left out. One site gives the same bytes.
 */
export const toDxf = (site: Site, layout: Layout): string => {
  const writer = new DxfWriter();
  const scale = dxfScale(site, layout);
  setUp(writer, site, scale);
  const things = [
    ...fenceThings(site, layout, scale),
    ...groundThings(site, layout),
    ...dimensionThings(site, layout, scale),
  ];
  things.forEach((thing, n) => write(writer, thing, scale, n));
  return writer.stringify();
};
