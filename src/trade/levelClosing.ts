import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How far levels may close off, as somebody asks for it: so much for the root of a length levelled. */
export interface LevelClosing {
  readonly name: string;
  /** Inches for a length of one inch; it grows with the square root of the length. */
  readonly perRoot: number;
  readonly source: Source;
}

const inch = 25.4;
const perRootKilometre = (mm: number): number => mm / inch / Math.sqrt(1e6 / inch);
const perRootMile = (feet: number): number => (feet * 12) / Math.sqrt(63_360);

/** From fine to rough. Building works ask for less than any of these. */
export const levelClosings: readonly LevelClosing[] = [
  {
    name: phrase`third order`,
    perRoot: perRootKilometre(12),
    source: {
      text: phrase`FGCS Standards and Specifications for Geodetic Control Networks (1984): 12 mm for the root of the kilometres; from memory`,
      status: 'memory',
    },
  },
  {
    name: phrase`ordinary levels`,
    perRoot: perRootMile(0.1),
    source: {
      text: phrase`survey handbooks, ordinary levelling: 0.1 ft for the root of the miles; from memory`,
      status: 'memory',
    },
  },
];

/** The most that levels over a length may close off by a rule, inches for inches; 0 for no length. */
export const closingOver = ({ perRoot }: LevelClosing, length: Inches): Inches =>
  inches(perRoot * Math.sqrt(Math.max(0, length)));
