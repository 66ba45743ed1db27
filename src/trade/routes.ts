import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** What is to be reached by hand on an accessible gate, over the ground, inches. */
export const accessibleReach = {
  low: inches(34),
  high: inches(48),
  source: { text: phrase`2010 ADA 404.2.7; from memory`, status: 'memory' } satisfies Source,
};

/** The clear width of a gate across a road for fire engines, inches. */
export const fireWidth = {
  length: inches(240),
  source: {
    text: phrase`IFC 503.2.1; approved security gates apart (503.6)`,
    status: 'published',
  } satisfies Source,
};

/** What is said of every gate that a motor moves. */
export const poweredGate = {
  text: phrase`a gate that a motor moves is for review by ASTM F2200 and UL 325, with a walk gate of its own beside it and no latch worked by hand`,
  source: {
    text: phrase`ASTM F2200-20, as summarised by its installers’ guide (DASMA)`,
    status: 'published',
  } satisfies Source,
};

/** How far a powered leaf that stands open is from anything fixed, inches. */
export const besidePowered = {
  length: inches(16),
  source: {
    text: phrase`ASTM F2200, 16 in between an open leaf and a fixed object; from memory`,
    status: 'memory',
  } satisfies Source,
};
