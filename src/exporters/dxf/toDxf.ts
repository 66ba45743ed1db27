import { Colors, DxfWriter, LWPolylineFlags, Units, point2d, point3d } from '@tarikjabiri/dxf';
import type { Layout } from '../../engine/layout.ts';
import { distance } from '../../geometry/distance.ts';
import type { Site } from '../../site/site.ts';
import { toDegrees, radians } from '../../units/radians.ts';
import { dxfLayerNames, dxfLayers } from './dxfLayers.ts';
import type { DxfCorner, DxfThing } from './dxfThing.ts';
import { fenceThings } from './fenceThings.ts';
import { groundThings } from './groundThings.ts';

/** The height of lettering on the ground, inches: 1/8 in at 1 in to 4 ft. */
const letter = 6;

/** No sign of a text may end its line in the file or steer the lettering. */
const plain = (text: string): string =>
  text
    .split(/\r\n|\r|\n/)
    .map((one) =>
      one
        .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
        .replace(/[\\{}]/g, '\\$&')
        // %% and a letter would be a sign
        .replace(/%(?=%)/g, '\\U+0025')
        .trim(),
    )
    .join('\\P');

/** Half a chord times its bulge is its middle ordinate; above 0 it goes round counter-clockwise. */
const bulged = ({ at, bow }: DxfCorner, next: DxfCorner | undefined) => {
  const chord = next === undefined ? 0 : distance(at, next.at);
  const point = point2d(at.x, at.y);
  return bow === 0 || chord === 0 ? { point } : { point, bulge: (-2 * bow) / chord };
};

const degrees = (angle: number): number => {
  const turned = toDegrees(radians(angle)) % 360;
  return turned < 0 ? turned + 360 : turned;
};

const write = (writer: DxfWriter, thing: DxfThing): void => {
  const options = { layerName: thing.layer };
  switch (thing.kind) {
    case 'path': {
      const { corners, closed } = thing;
      const flags = closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
      const points = corners.map((corner, n) => bulged(corner, corners[n + 1] ?? corners[0]));
      writer.addLWPolyline(points, { ...options, flags });
      return;
    }
    case 'circle':
      writer.addCircle(point3d(thing.at.x, thing.at.y), thing.radius, options);
      return;
    case 'arc': {
      const ends = [thing.start, thing.start + thing.sweep].map(degrees);
      const [from = 0, to = 0] = thing.sweep < 0 ? ends.toReversed() : ends;
      writer.addArc(point3d(thing.at.x, thing.at.y), thing.radius, from, to, options);
      return;
    }
    case 'point':
      writer.addPoint(thing.at.x, thing.at.y, thing.z, options);
      return;
    case 'text':
      writer.addMText(point3d(thing.at.x, thing.at.y), letter, plain(thing.text), options);
  }
};

/**
 * A site as a DXF in inches, x east, y north: fence lines with their curves, posts at their actual
 * outside diameter, holes, gates closed and the ground that they swing over, features, marks and grade
 * shots, each on the layer that `dxfLayers` names. Gates that do not fit are left out. One site gives
 * the same bytes.
 */
export const toDxf = (site: Site, layout: Layout): string => {
  const writer = new DxfWriter();
  writer.setUnits(Units.Inches);
  writer.setVariable('$MEASUREMENT', { 70: 0 });
  writer.setVariable('$LASTSAVEDBY', { 1: 'Lathline' });
  for (const name of dxfLayerNames) writer.addLayer(name, dxfLayers[name] as Colors);
  for (const thing of [...fenceThings(site, layout), ...groundThings(site)]) write(writer, thing);
  return writer.stringify();
};
