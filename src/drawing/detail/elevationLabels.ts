import type { Site } from '../../site/site.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import { labelSize } from '../lettering/label.ts';
import { detailLook, type DetailLabel } from './detailLabel.ts';
import { holeText, postText, sizeText } from './detailTexts.ts';
import type { GateSight, SightPost } from './gateSight.ts';
import type { OnPaper } from './onPaper.ts';
import { phrase } from '../../phrases/phrase.ts';

const upright = radians(0);

/** Clear under a hole, paper inches. */
const under = 0.05;

/** A text under a place, moved outwards from the gate, then lower and lower. */
const placesUnder = (
  { x, y }: PaperPoint,
  { width, height }: { readonly width: number; readonly height: number },
  outwards: 1 | -1,
) =>
  [0, 0.2, 0.4, 0.6, 0.8, 1].flatMap((lower) =>
    [0, 0.25, 0.5, 0.75, 1].map((share) => ({
      at: { x: x + outwards * share * width, y: y + under + lower + height / 2 },
      angle: upright,
    })),
  );

/** A post of the opening in words; how high it stands where no dimension says that. */
const postWords = ({ post }: SightPost, other: SightPost, site: Site): string => {
  const [own, others] = [post, other.post].map(({ above }) => sizeText(above, site));
  const high = own === others ? [] : [phrase`${own ?? ''} high`];
  return [postText(post, site), ...high, holeText(post, site)].join('\n');
};

/** Words under the hole of a post of the opening, to its side outwards. */
const postLabel = (
  { post, at, base }: SightPost,
  words: string,
  on: OnPaper,
  outwards: 1 | -1,
): DetailLabel => {
  const look = detailLook(words);
  const foot = on({ x: at.x + (outwards * post.hole.diameter) / 2, y: base - post.hole.depth });
  const size = labelSize(look);
  const flush = { x: foot.x - (outwards * size.width) / 2, y: foot.y };
  return { look, places: placesUnder(flush, size, outwards), need: 'must' };
};

/** The tag alone of a post beside the opening: beside its top, else under its hole. */
const tagLabel = ({ post, at, base }: SightPost, on: OnPaper): DetailLabel => {
  const look = detailLook(post.tag, 'bold');
  const size = labelSize(look);
  const top = on({ x: at.x, y: base + post.above });
  const foot = on({ x: at.x, y: base - post.hole.depth });
  const over = [0, 1, -1, 2, -2].map((share) => ({
    at: { x: top.x + share * (size.width / 2 + 0.05), y: top.y - under - size.height / 2 },
    angle: upright,
  }));
  return {
    look,
    places: [...over, ...placesUnder(foot, size, 1), ...placesUnder(foot, size, -1)],
    need: 'must',
  };
};

/** Leaf 1 and leaf 2 as the working calls them, in their fabric, where they have room there. */
const leafLabels = ({ leaves, slides }: GateSight, on: OnPaper): DetailLabel[] => {
  const middles = [
    ...leaves.map(({ from, to, bottom, height }) => ({ from, to, y: bottom + height / 2 })),
    ...slides.map(({ face, closed: [, to], bottom, height }) => ({
      from: face,
      to,
      y: bottom + height / 2,
    })),
  ];
  if (middles.length < 2) return [];
  return middles.map(({ from, to, y }, n): DetailLabel => ({
    look: detailLook(phrase`Leaf ${n + 1}`),
    places: [{ at: on({ x: (from + to) / 2, y }), angle: upright }],
    need: 'may',
  }));
};

/** What an elevation says beside its dimensions: its posts by tag, size and hole, and its leaves. */
export const elevationLabels = (sight: GateSight, site: Site, on: OnPaper): DetailLabel[] => {
  const [start, end] = sight.pair;
  const shown = sight.stands.filter(({ post }) => post.kind !== 'hold-open');
  return [
    ...shown.map((stand) => tagLabel(stand, on)),
    postLabel(start, postWords(start, start, site), on, -1),
    postLabel(end, postWords(end, start, site), on, 1),
    ...leafLabels(sight, on),
  ];
};
