declare const unit: unique symbol;

/** An angle in radians, counter-clockwise from the x axis (east) unless said otherwise. */
export type Radians = number & { readonly [unit]: 'rad' };

/** Calls a plain number an angle in radians. The only cast to `Radians`. */
export const radians = (value: number): Radians => value as Radians;

/** An angle given in degrees, as radians. */
export const fromDegrees = (degrees: number): Radians => radians((degrees * Math.PI) / 180);

/** An angle given in radians, as degrees. */
export const toDegrees = (angle: Radians): number => (angle * 180) / Math.PI;
