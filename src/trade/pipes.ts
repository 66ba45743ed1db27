import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';
import { phrase } from '../phrases/phrase.ts';

/** A pipe of the fence trade. Outside diameter and wall are what it is; the label is what people call it. */
export interface FencePipe {
  readonly label: string;
  readonly od: Inches;
  readonly wall: Inches;
  readonly poundsPerFoot: number;
  readonly source: Source;
}

const fromMemory = (text: string): Source => ({ text, status: 'memory' });
const f1083 = fromMemory(phrase`ASTM F1083, regular pipe (schedule 40); from memory`);
const f1043 = fromMemory(phrase`ASTM F1043 Group IC, high strength pipe; from memory`);
const table: Source = {
  text: phrase`reprinted schedule 40 pipe table: diameter and wall; weight from memory`,
  status: 'published',
};
const everett: Source = {
  text: 'City of Everett WA, Beverly Park Substation sitework specification, p. 5',
  status: 'published',
};

const rows = [
  ['1-3/8 schedule 40', 1.315, 0.133, 1.68, f1083],
  ['1-5/8 schedule 40', 1.66, 0.14, 2.27, f1083],
  ['1-5/8 high strength', 1.66, 0.111, 1.84, f1043],
  ['2 schedule 40', 1.9, 0.145, 2.72, everett],
  ['2 high strength', 1.9, 0.12, 2.28, f1043],
  ['2-1/2 schedule 40', 2.375, 0.154, 3.65, table],
  ['2-1/2 high strength', 2.375, 0.13, 3.12, f1043],
  ['3 schedule 40', 2.875, 0.203, 5.79, table],
  ['3 high strength', 2.875, 0.16, 4.64, f1043],
  ['3-1/2 schedule 40', 3.5, 0.216, 7.58, f1083],
  ['3-1/2 high strength', 3.5, 0.16, 5.71, f1043],
  ['4 schedule 40', 4, 0.226, 9.11, f1083],
  ['4 high strength', 4, 0.16, 6.56, f1043],
  ['6-5/8 schedule 40', 6.625, 0.28, 18.97, f1083],
  [
    '8-5/8 light wall',
    8.625,
    0.277,
    24.7,
    fromMemory(phrase`older fence specifications; from memory`),
  ],
  ['8-5/8 schedule 40', 8.625, 0.322, 28.55, f1083],
] as const;

/** The trap in trade names: the same name means two pipes. */
export const pipeSource: Source = {
  text: phrase`A trade name is a label: fence pipe called 2-1/2 measures 2.375 in outside, a plumber’s pipe of that name 2.875. Order by outside diameter and wall. Diameters of 1.9, 2.375 and 2.875 with their walls: reprinted schedule 40 table; others from memory of ASTM F1083 and F1043, to be confirmed.`,
  status: 'memory',
};

/** Every pipe of the table, thin to thick; no two have both diameter and wall in common. */
export const fencePipes: readonly FencePipe[] = rows.map(
  ([label, od, wall, poundsPerFoot, source]) => ({
    label,
    od: inches(od),
    wall: inches(wall),
    poundsPerFoot,
    source,
  }),
);
