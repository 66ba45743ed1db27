import { parseString, type Dxf } from 'dxf';
import type { Found } from '../../site/found.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { inchesIn, type FileUnit } from '../fileUnit.ts';
import { fileUnitWords } from '../fileUnitWords.ts';
import { foundFrom } from '../foundFrom.ts';
import { heightsLost } from '../heightsLost.ts';
import { labelText } from '../labelText.ts';
import { dxfCounts, type DxfCounts } from './dxfCounts.ts';
import { dxfLines } from './dxfLines.ts';
import { drawnTypes } from './entityShape.ts';
import { exploded } from './exploded.ts';
import { raisedLines } from './raisedLines.ts';
import { withHiddenLayers } from './withHiddenLayers.ts';
import { phrase } from '../../phrases/phrase.ts';

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
  if (chosen !== null) return [chosen, phrase`Read in ${fileUnitWords[chosen]}, as chosen`];
  const value = header.insUnits ?? 0;
  const said = named[value];
  if (said !== undefined) return [said, phrase`Read in ${fileUnitWords[said]}, as the file says`];
  if (value !== 0 && Number.isFinite(value)) {
    return [
      usual,
      phrase`The file names a unit that is not read here ($INSUNITS ${value}): read in ${fileUnitWords[usual]}, choose another if that is wrong`,
    ];
  }
  return [usual, phrase`The file names no unit: read in ${fileUnitWords[usual]}`];
};

/** Sorts of entities that are told one by one, and the letters of their names. */
const [mostSorts, longestSort] = [8, 24];

const othersIn = (counts: DxfCounts): string => {
  const others = [...counts].filter(([type]) => !drawnTypes.has(type));
  const told = others
    .slice(0, mostSorts)
    .map(([type, count]) => `${count} ${labelText(type).slice(0, longestSort)}`);
  const rest = others.slice(mostSorts).reduce((sum, [, count]) => sum + count, 0);
  return [...told, ...(rest === 0 ? [] : [phrase`${rest} of other sorts`])].join(', ');
};

const leftOut = (counts: DxfCounts, onPaper: number): string[] => {
  const others = othersIn(counts);
  return [
    ...(others === '' ? [] : [phrase`Cannot be brought and is left out: ${others}`]),
    ...(onPaper === 0
      ? []
      : [phrase`Left out, since it lies on a page and not on the ground: ${onPaper}`]),
  ];
};

const noneText = (counts: DxfCounts, onPaper: number): string => {
  const paper = onPaper === 0 ? '' : phrase`${onPaper} on a page and not on the ground`;
  const found = [othersIn(counts), paper].filter((one) => one !== '').join(', ');
  return phrase`expected lines, arcs, points or texts, found ${found === '' ? phrase`none` : phrase`only ${found}`}`;
};

const parsed = (text: string): Parsed<Dxf> => {
  try {
    return read(parseString(text));
  } catch {
    return unread(phrase`expected a DXF, found sections that cannot be read`);
  }
};

/**
 * What the text of a DXF file has: lines, polylines, arcs, circles, points and texts by their layers,
 * blocks taken apart, lines that meet end to end joined. Unread with one line for what is no DXF, breaks
 * off or has nothing of the kind. Groups of layers that are off or frozen say so.
 */
export const fromDxf = (text: string, units: DxfUnits): Parsed<Found> => {
  const lines = dxfLines(text);
  if (!lines.ok) return lines;
  const counts = dxfCounts(lines.value);
  if (!counts.ok) return counts;
  const dxf = parsed(text);
  if (!dxf.ok) return dxf;
  const [unit, said] = unitOf(dxf.value, units);
  try {
    const { drawn, refused, onPaper } = exploded(dxf.value, inchesIn[unit]);
    const lost = heightsLost(raisedLines(lines.value));
    const told = [said, ...leftOut(counts.value, onPaper), ...lost];
    const none = noneText(counts.value, onPaper);
    const by = { unit, lines: 'joined', origin: null, told, refused, none } as const;
    const found = foundFrom(drawn, by);
    return found.ok ? read(withHiddenLayers(found.value, dxf.value)) : found;
  } catch (error) {
    if (error instanceof RangeError) return unread(error.message);
    throw error;
  }
};
