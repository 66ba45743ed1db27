import { inches, type Inches } from '../units/inches.ts';
import type { FencePipe } from './pipes.ts';
import { schedule40 } from './schedule40.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** The post that carries the rollers of a leaf that rolls, where the gate does not say another. */
export const rollerPost: { readonly post: FencePipe; readonly source: Source } = {
  post: schedule40(inches(4)),
  source: {
    text: phrase`roller posts of 4.000 in OD: common practice, no published source; ASTM F1184 Class 2, from memory`,
    status: 'practice',
  },
};

/** How high a post that holds a leaf open stands above the ground, inches. */
export const holdOpenPost: { readonly above: Inches; readonly source: Source } = {
  above: inches(36),
  source: {
    text: phrase`a post that holds a leaf open stands 36 in above ground: common practice, no published source`,
    status: 'practice',
  },
};
