import type { Post } from '../../engine/post.ts';
import type { Site } from '../../site/site.ts';
import { holeText, sizeText } from './detailTexts.ts';
import type { GateSight } from './gateSight.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';
import { postWord } from '../tables/postWord.ts';
import { sectionText } from '../tables/sectionText.ts';

const called: Readonly<Partial<Record<Post['kind'], string>>> = {
  roller: phrase`roller post`,
  'hold-open': phrase`holds a leaf open`,
  stop: phraseOf('post')`stop`,
};

/** The posts beside an opening by tag: what they are, outside diameter, height and hole; those alike at once. */
export const standTexts = ({ stands }: GateSight, site: Site): readonly string[] => {
  const alike = new Map<string, string[]>();
  for (const { post } of stands) {
    const size = sectionText(post, site.lengths);
    const rest = phrase`${called[post.kind] ?? postWord(post)}, ${size}, ${sizeText(post.above, site)} high, ${holeText(post, site)}`;
    alike.set(rest, [...(alike.get(rest) ?? []), post.tag]);
  }
  return [...alike].map(([rest, tags]) => `${tags.join(', ')}: ${rest}.`);
};
