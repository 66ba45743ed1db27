import { parseString, type Dxf } from 'dxf';
import type { Found } from '../../site/found.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { inchesIn, type FileUnit } from '../fileUnit.ts';
import { foundFrom } from '../foundFrom.ts';
import { dxfCounts, type DxfCounts } from './dxfCounts.ts';
import { drawnTypes } from './entityShape.ts';
import { exploded } from './exploded.ts';

/** In what units a DXF is read: as chosen, else as it says, else the usual ones of the site. */
export interface DxfUnits {
  readonly chosen: FileUnit | null;
  readonly usual: FileUnit;
}

/** Values of $INSUNITS, the units of a drawing, in the public DXF reference; those of land alone. */
const named: Readonly<Record<number, FileUnit>> = {
  1: 'inches',
  2: 'feet',
  4: 'millimetres',
  5: 'centimetres',
  6: 'metres',
  10: 'yards',
  21: 'US survey feet',
};

const unitOf = ({ header }: Dxf, { chosen, usual }: DxfUnits): [FileUnit, string] => {
  if (chosen !== null) return [chosen, `Read in ${chosen}, as chosen`];
  const said = named[header.insUnits ?? 0];
  if (said !== undefined) return [said, `Read in ${said}, as the file says`];
  return [usual, `The file names no unit: read in ${usual}`];
};

const leftOut = (counts: DxfCounts, onPaper: number): string[] => {
  const others = [...counts].filter(([type]) => !drawnTypes.has(type));
  const list = others.map(([type, count]) => `${count} ${type}`).join(', ');
  return [
    ...(others.length === 0 ? [] : [`Cannot be brought and is left out: ${list}`]),
    ...(onPaper === 0
      ? []
      : [`Left out, since it lies on a page and not on the ground: ${onPaper}`]),
  ];
};

const parsed = (text: string): Parsed<Dxf> => {
  try {
    return read(parseString(text));
  } catch {
    return unread('expected a DXF, found sections that cannot be read');
  }
};

/**
 * What the text of a DXF file has: lines, polylines, arcs, circles, points and texts by their layers,
 * blocks taken apart, lines that meet end to end joined. Unread with one line for what is no DXF, breaks
 * off or has nothing of the kind.
 */
export const fromDxf = (text: string, units: DxfUnits): Parsed<Found> => {
  const counts = dxfCounts(text);
  if (!counts.ok) return counts;
  const dxf = parsed(text);
  if (!dxf.ok) return dxf;
  const [unit, said] = unitOf(dxf.value, units);
  try {
    const { drawn, refused, onPaper } = exploded(dxf.value, inchesIn[unit]);
    const told = [said, ...leftOut(counts.value, onPaper)];
    const none = 'expected lines, arcs, points or texts, found none';
    return foundFrom(drawn, { unit, lines: 'joined', origin: null, told, refused, none });
  } catch (error) {
    if (error instanceof RangeError) return unread(error.message);
    throw error;
  }
};
