import { inches, type Inches } from './inches.ts';
import type { LengthStyle } from './lengthStyle.ts';

/**
 * So many of the finest that a style writes (a fraction of an inch, 0.01 ft, 1 mm) as a length in
 * inches, to the last bit what a reader of the text would get. `steps` is whole, of either sign.
 */
export const lengthOfSteps = (steps: number, { system, fraction }: LengthStyle): Inches => {
  switch (system) {
    case 'feet':
    case 'inches':
      return inches(steps / fraction);
    case 'decimal feet':
      return inches((steps / 100) * 12);
    case 'mm':
    case 'm':
      return inches((steps * 10) / 254);
  }
};
