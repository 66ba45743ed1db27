import { directionality, flatGround, pressureFactor } from '../../trade/windTerms.ts';
import type { Inches } from '../../units/inches.ts';

/** The wind that a place is to be built for. */
export interface Wind {
  /** Basic wind speed, miles per hour, three-second gust. */
  readonly speed: number;
  /** Exposure coefficient Kz at the height of the fence. */
  readonly exposure: number;
  /** Topographic factor; 1 on flat ground. */
  readonly ground?: number;
  /** How thick the ice is, all round wire and pipe, that the wind finds there; inches, none where it is left out. */
  readonly ice?: Inches;
}

/** Velocity pressure, pounds per square foot: 0.00256 Kz Kzt Kd V² (ASCE 7-16 26.10, from memory). */
export const velocityPressure = ({ speed, exposure, ground = flatGround }: Wind): number =>
  pressureFactor * exposure * ground * directionality * speed ** 2;
