import { pipeWeight } from '../../trade/pipeWeight.ts';
import { steelWeight } from '../../trade/steel.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a leaf is made of. Lengths in inches. */
export interface LeafMake {
  /** Out to out of the frame. */
  readonly width: Inches;
  readonly height: Inches;
  readonly frame: { readonly od: Inches; readonly wall: Inches };
  /** Of the fabric: clear between wires, and their diameter. */
  readonly mesh: Inches;
  readonly wire: Inches;
}

/** One part of the weight of a leaf: what it is, how long or large, and pounds. */
export interface WeightTerm {
  readonly label: string;
  readonly pounds: number;
}

/** The widest that a leaf may be between uprights, inches: ASTM F654-03 5.1.1. */
export const widestPanel = inches(60);
/** Leaves of this width and over have truss rods, inches: ASTM F900-11 4.1. */
export const trussFrom = inches(60);
/** Truss rods of 3/8 in, as Tremonton UT 3.18.010 asks for. */
const rod = 3 / 8;
/** Bar, bands, corners, hinges and latch over all else: ours, no published source. */
const fittings = 0.1;

/** Pounds a square foot of fabric: two families of wires, each a pitch apart; derived from its sizes. */
export const fabricWeight = (mesh: Inches, wire: Inches): number =>
  (2 / (mesh + wire)) * (Math.PI / 4) * wire ** 2 * steelWeight * 144;

/** How many uprights a leaf has between its sides. */
export const uprightsIn = (width: Inches): number =>
  Math.max(0, Math.ceil(width / widestPanel) - 1);

/** The weight of a leaf, part by part: frame, uprights, fabric, truss rods, fittings. */
export const leafWeight = ({ width, height, frame, mesh, wire }: LeafMake): WeightTerm[] => {
  const perInch = pipeWeight(frame.od, frame.wall) / 12;
  const uprights = uprightsIn(width);
  const panels = uprights + 1;
  const diagonal = Math.hypot(width / panels, height);
  const rods = width >= trussFrom ? panels * diagonal * (Math.PI / 4) * rod ** 2 * steelWeight : 0;
  const parts: WeightTerm[] = [
    { label: phrase`frame`, pounds: perInch * 2 * (width + height) },
    { label: phrase`uprights`, pounds: perInch * uprights * height },
    { label: phrase`fabric`, pounds: (fabricWeight(mesh, wire) * width * height) / 144 },
    { label: phrase`truss rods`, pounds: rods },
  ].filter(({ pounds }) => pounds > 0);
  const all = parts.reduce((sum, { pounds }) => sum + pounds, 0);
  return [...parts, { label: phrase`fittings`, pounds: fittings * all }];
};
