import type { Post } from '../../engine/post.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';

/** What a post is across, and that it is square where it is no pipe. */
export const sectionText = (
  { od, section }: Pick<Post, 'od' | 'section'>,
  style: LengthStyle,
): string => {
  const size = pipeSize(od, style);
  return section === 'round' ? phrase`${size} OD` : phrase`${size} square`;
};
