import { openFrameCoefficient } from '../../trade/openFrames.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { framePressure } from './framePressure.ts';
import { velocityPressure, type Wind } from './velocityPressure.ts';

/** A fence as wind meets it. Lengths in inches. */
export interface WindFence {
  /** Share of the fabric that is solid, with whatever is woven in or hung on it; 0 to 1. */
  readonly solidity: number;
  /** Wire of the fabric. */
  readonly wire: Inches;
  readonly fabricHeight: Inches;
  /** Between the ground and the fabric. */
  readonly gapUnder: Inches;
  /** Outside diameters; null for no rail. */
  readonly post: Inches;
  readonly rail: Inches | null;
}

/** One part that the wind takes hold of: its force, pounds, and how high over the ground it is, inches. */
export interface WindPart {
  readonly part: 'fabric' | 'rail' | 'post';
  readonly pounds: number;
  readonly height: Inches;
}

/** The wind on the piece of a fence that one post holds. */
export interface FenceWind {
  /** Velocity pressure, and pressure on what is solid: pounds per square foot. */
  readonly velocity: number;
  readonly pressure: number;
  readonly coefficient: number;
  readonly parts: readonly WindPart[];
  /** All of it at strength level: pounds, and moment at the ground in inch-pounds. */
  readonly pounds: number;
  readonly moment: number;
}

const squareFoot = 144;

/**
 * The wind on one post and the fence of a bay, inches from post to post, at strength level: force on the
 * solid area of fabric, rail and post by the coefficient of an open frame as solid as the fabric, at
 * least 16 psf. Null where the fabric is more solid than the table of open frames goes.
 */
export const fenceWind = (fence: WindFence, wind: Wind, bay: Inches): FenceWind | null => {
  const { solidity, wire, fabricHeight, gapUnder, post, rail } = fence;
  const velocity = velocityPressure(wind);
  const coefficient = openFrameCoefficient(solidity, 'round', (wire / 12) * Math.sqrt(velocity));
  if (coefficient === null) return null;
  const pressure = framePressure(velocity, coefficient);
  const top = fabricHeight + gapUnder;
  const on = (part: WindPart['part'], area: number, height: number): WindPart => ({
    part,
    pounds: (pressure * area) / squareFoot,
    height: inches(height),
  });
  const parts = [
    on('fabric', solidity * fabricHeight * bay, gapUnder + fabricHeight / 2),
    ...(rail === null ? [] : [on('rail', rail * bay, top)]),
    on('post', post * top, top / 2),
  ];
  return {
    velocity,
    pressure,
    coefficient,
    parts,
    pounds: parts.reduce((sum, { pounds }) => sum + pounds, 0),
    moment: parts.reduce((sum, { pounds, height }) => sum + pounds * height, 0),
  };
};
