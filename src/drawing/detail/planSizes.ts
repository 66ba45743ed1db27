import { clearPassage, standsIn } from '../../engine/gate/clearPassage.ts';
import { inches } from '../../units/inches.ts';
import type { Site } from '../../site/site.ts';
import { detailLook } from './detailLabel.ts';
import { joined, type DetailPart } from './detailPart.ts';
import { detailPens } from './detailPens.ts';
import { openingTexts, sizeText } from './detailTexts.ts';
import { levelDimension } from './dimension.ts';
import type { GateSight } from './gateSight.ts';
import type { OnPaper } from './onPaper.ts';
import { phrase } from '../../phrases/phrase.ts';

/** From what is drawn to the first line of dimensions, and from one to the next; paper inches. */
const first = 0.16;
const next = 0.3;

interface Page {
  readonly sight: GateSight;
  readonly site: Site;
  readonly on: OnPaper;
  /** To which side of the paper the dimensions stand off, and how far out is free; paper inches. */
  readonly side: 1 | -1;
  readonly free: number;
}

/** From where to where the clear passage is with the leaves open; null where it is no one piece of the opening. */
const passageEnds = ({ laid, leaves, pair }: GateSight): readonly [number, number] | null => {
  if (leaves.length === 0 || laid.stop !== null) return null;
  const hinges = laid.opening.terms.filter(({ role }) => role === 'hinge');
  const end = pair[1].at.x - pair[1].post.od / 2;
  const ends = { from: 0, to: end };
  leaves.forEach(({ laid: leaf, way }, n) => {
    const taken = standsIn(leaf, hinges[n]?.planned ?? inches(0));
    if (way > 0) ends.from = taken;
    else ends.to = end - taken;
  });
  return ends.to > ends.from ? [ends.from, ends.to] : null;
};

const passageSize = ({ sight, site, on, side, free }: Page): DetailPart[] => {
  const ends = passageEnds(sight);
  if (ends === null) return [];
  const { clear } = clearPassage(sight.gate, sight.laid);
  return [
    levelDimension({
      ends: [on({ x: ends[0], y: 0 }), on({ x: ends[1], y: 0 })],
      line: side * (free + first),
      look: detailLook(phrase`passage ${sizeText(clear, site)}`),
      side,
    }),
  ];
};

/** The opening from face to face with what to hold, and under it what is clear with the leaves open. */
export const planSizes = (page: Page): DetailPart => {
  const { sight, site, on, side, free } = page;
  const [start, end] = sight.pair;
  const passage = passageSize(page);
  const faces = [
    on({ x: 0, y: start.at.y }),
    on({ x: end.at.x - end.post.od / 2, y: end.at.y }),
  ] as const;
  const opening = levelDimension({
    ends: faces,
    line: side * (free + first + (passage.length > 0 ? next : 0)),
    look: detailLook(openingTexts(sight.laid, site), 'bold'),
    side,
    pen: detailPens.opening,
  });
  return joined([opening, ...passage]);
};
