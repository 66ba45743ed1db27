import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** Which posts are braced to the nearest line post, whatever the fence. */
export const bracedPosts: Source = {
  text: phrase`end, latch and corner posts are braced to the nearest line post, gate posts always with truss rods and a tightener: Caltrans 80-3.03`,
  status: 'published',
};

/** From this height on terminals have a brace rail though there is a top rail. */
export const braceRailFrom: { readonly height: Inches; readonly source: Source } = {
  height: inches(72),
  source: {
    text: phrase`a brace rail where there is no top rail, and at 6 ft and over: ASTM F567 and CLFMI, from memory`,
    status: 'memory',
  },
};

/** The truss rods of a brace. */
export const braceRods: Source = {
  text: phrase`3/8 in truss rods with braces of 1-5/8 at corner and gate posts: Tremonton UT 3.18.010, 6 ft fence`,
  status: 'published',
};
