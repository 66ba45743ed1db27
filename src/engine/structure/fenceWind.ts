import { barbedArms } from '../../trade/barbedWire.ts';
import { openFrameCoefficient, type MemberShape } from '../../trade/openFrames.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { framePressure } from './framePressure.ts';
import { iced } from './iced.ts';
import { velocityPressure, type Wind } from './velocityPressure.ts';

/** A fence as wind meets it. Lengths in inches. */
export interface WindFence {
  /** Share of the fabric that is solid, with whatever is woven in or hung on it; 0 to 1. */
  readonly solidity: number;
  /** How wind takes what closes the fabric: wires are round, which counts where nothing is said. */
  readonly shape?: MemberShape;
  /** Of the fabric: clear between parallel wires, and their diameter. */
  readonly mesh: Inches;
  readonly wire: Inches;
  readonly fabricHeight: Inches;
  /** Between the ground and the fabric. */
  readonly gapUnder: Inches;
  /** Outside diameter. */
  readonly post: Inches;
  readonly rails: readonly WindRail[];
  /** Strands over the fabric and what one is across; null for none. */
  readonly barbedWire: { readonly strands: number; readonly across: Inches } | null;
}

/** A rail by its outside diameter, inches: along the top, half way up, or along the bottom of the fabric. */
export interface WindRail {
  readonly part: 'top rail' | 'middle rail' | 'bottom rail';
  readonly od: Inches;
}

/** One part that the wind takes hold of: its force, pounds, and how high over the ground it is, inches. */
export interface WindPart {
  readonly part: 'fabric' | 'barbed wire' | 'post' | WindRail['part'];
  readonly pounds: number;
  readonly height: Inches;
}

/** The wind on the piece of a fence that one post holds. */
export interface FenceWind {
  /** Velocity pressure, and pressure on what is solid: pounds per square foot. */
  readonly velocity: number;
  readonly pressure: number;
  readonly coefficient: number;
  /** Share of the fabric that is solid, with its ice. */
  readonly solidity: number;
  readonly parts: readonly WindPart[];
  /** All of it at strength level: pounds, and moment at the ground in inch-pounds. */
  readonly pounds: number;
  readonly moment: number;
}

const squareFoot = 144;

/** How far up the fabric a rail is, as a share of its height. */
const upTo: Readonly<Record<WindRail['part'], number>> = {
  'top rail': 1,
  'middle rail': 1 / 2,
  'bottom rail': 0,
};

/**
 * The wind on one post and the fence of a bay, inches from post to post, at strength level: force on the
 * solid area of fabric, rails, barbed wire and post, with whatever ice is on them, by the coefficient of an
 * open frame as solid as the fabric, at least 16 psf. Strands of barbed wire count at the middle of their arms. Null where the fabric is more solid than the table of open frames goes.
 */
export const fenceWind = (bare: WindFence, wind: Wind, bay: Inches): FenceWind | null => {
  const fence = iced(bare, wind.ice ?? inches(0));
  const {
    solidity,
    shape = 'round',
    wire,
    fabricHeight,
    gapUnder,
    post,
    rails,
    barbedWire,
  } = fence;
  const velocity = velocityPressure(wind);
  const coefficient = openFrameCoefficient(solidity, shape, (wire / 12) * Math.sqrt(velocity));
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
    ...rails.map(({ part, od }) => on(part, od * bay, gapUnder + upTo[part] * fabricHeight)),
    ...(barbedWire === null
      ? []
      : [
          on(
            'barbed wire',
            barbedWire.strands * barbedWire.across * bay,
            top + barbedArms.reach / 2,
          ),
        ]),
    on('post', post * top, top / 2),
  ];
  return {
    velocity,
    pressure,
    coefficient,
    solidity,
    parts,
    pounds: parts.reduce((sum, { pounds }) => sum + pounds, 0),
    moment: parts.reduce((sum, { pounds, height }) => sum + pounds * height, 0),
  };
};
