import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How far machines and what they lift stay from an electric line overhead, inches, up to 50,000 volts. */
export const overheadClearance = {
  length: inches(120),
  source: {
    text: phrase`29 CFR 1926.1408 Table A: 10 ft up to 50 kV, more above; from memory`,
    status: 'memory',
  } satisfies Source,
};

/** Where fence that passes under an electric line is grounded: so far from it, inches, and at its gates. */
export const fenceGrounding = {
  length: inches(1800),
  source: {
    text: phrase`MIL-HDBK-1013/10: 150 ft from where high voltage crosses, and at each side of every gate`,
    status: 'published',
  } satisfies Source,
};
