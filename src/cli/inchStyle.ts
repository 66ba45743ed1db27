import type { LengthStyle } from '../units/lengthStyle.ts';

/** How the parts of an opening that is no site's are written: in inches, to the sixteenth. */
export const inchStyle: LengthStyle = { system: 'inches', fraction: 16 };
