import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';

/** How far machines and what they lift stay from an electric line overhead, inches, up to 50,000 volts. */
export const overheadClearance = {
  length: inches(120),
  source: {
    text: '29 CFR 1926.1408 Table A: 10 ft up to 50 kV, more above; from memory',
    status: 'memory',
  } satisfies Source,
};

/** Where fence that passes under an electric line is grounded. */
export const fenceGrounding: Source = {
  text: 'MIL-HDBK-1013/10: fence is grounded 150 ft from where high voltage crosses it, and at each side of every gate',
  status: 'published',
};
