import { inches } from '../units/inches.ts';
import { schedule40 } from './schedule40.ts';
import type { FencePipe } from './pipes.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';
import { phrase } from '../phrases/phrase.ts';

/** The posts and top rail that a fence of some height is usually built with. */
export interface PostSizes {
  /** The tallest fabric that this row serves. */
  readonly upTo: Inches;
  readonly line: FencePipe;
  /** End, corner and pull posts. */
  readonly terminal: FencePipe;
  readonly topRail: FencePipe;
  readonly source: Source;
}

const ordinance = (heights: string): Source => ({
  text: phrase`Byesville OH fence code (after ASTM F567 and F761), ${heights}; read by trade name`,
  status: 'published',
});
const industrial = (heights: string, more = ''): Source => ({
  text: phrase`ASTM F1043 industrial posts, ${heights}${more}; from memory`,
  status: 'memory',
});

const rows = [
  [60, 1.66, 2.375, 1.315, ordinance(phrase`up to 5 ft`)],
  [72, 1.9, 2.375, 1.315, ordinance(phrase`6 ft`)],
  [96, 2.375, 2.875, 1.66, industrial(phrase`over 6 to 8 ft`)],
  [
    144,
    2.875,
    4,
    1.66,
    industrial(phrase`over 8 to 12 ft`, phrase` (terminals 2.875 to 4: the larger)`),
  ],
] as const;

/** Rows by rising height. They are starting points for a fence spec, not a finding. */
export const postSizes: readonly PostSizes[] = rows.map(
  ([upTo, line, terminal, topRail, source]) => ({
    upTo: inches(upTo),
    line: schedule40(line),
    terminal: schedule40(terminal),
    topRail: schedule40(topRail),
    source,
  }),
);

/** The usual sizes for a height of fabric in inches, the lowest row for anything lower; null above 12 ft. */
export const postsForHeight = (height: Inches): PostSizes | null =>
  postSizes.find(({ upTo }) => height <= upTo) ?? null;
