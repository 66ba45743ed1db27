import type { Atom } from '../atom.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import { detailPens } from './detailPens.ts';
import { boxOutline, hiding, inked } from './drawn.ts';
import type { SightPost } from './gateSight.ts';
import { leaning } from './leaning.ts';
import type { OnPaper } from './onPaper.ts';

/** Between the lines that stand for concrete, paper inches. */
const concrete = 0.05;

/** The hole of a post below what it stands on, filled with concrete; a plate on a wall is as thick as its line. */
export const holeAtoms = ({ post, at, base }: SightPost, on: OnPaper): Atom[] => {
  const { diameter, depth } = post.hole;
  const from = on({ x: at.x - diameter / 2, y: base });
  const to = on({ x: at.x + diameter / 2, y: base - depth });
  if (depth === 0) return [inked(detailPens.hole, segmentsOutline([[from, to]]))];
  const outline = boxOutline(from, to);
  const [fill, edge] = hiding(detailPens.hole, outline);
  const hatch = inked(detailPens.concrete, leaning({ from, to }, concrete, 1));
  return [fill, hatch, edge].flatMap((atom) => atom ?? []);
};

/** A post from the bottom of its hole to its top, at its outside diameter. */
export const postAtoms = ({ post, at, base }: SightPost, on: OnPaper): Atom[] => {
  const from = on({ x: at.x - post.od / 2, y: base + post.above });
  const to = on({ x: at.x + post.od / 2, y: base - post.hole.depth });
  return hiding(detailPens.post, boxOutline(from, to));
};
