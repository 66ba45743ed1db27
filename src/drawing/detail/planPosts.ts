import { radians, type Radians } from '../../units/radians.ts';
import { moved } from '../../geometry/moved.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, polylineOutline } from '../explode/polylineOutline.ts';
import type { Outline } from '../outline.ts';
import { detailPens } from './detailPens.ts';
import { hiding, inked } from './drawn.ts';
import type { SightPost } from './gateSight.ts';
import type { OnPaper } from './onPaper.ts';

/** A square about a place of the paper, its sides turned as on the ground. */
const square = (middle: PaperPoint, side: number, turned: Radians): Outline =>
  polylineOutline(
    [1, 3, 5, 7].map((eighth) =>
      moved(middle, radians((eighth * Math.PI) / 4 - turned), (side * Math.SQRT2) / 2),
    ),
    true,
  );

/** The hole of a post from above, or its plate on a wall. */
export const holeCircle = ({ post, at, turned }: SightPost, on: OnPaper, ratio: number): Atom => {
  const wide = post.hole.diameter / ratio;
  const plate = post.wall?.set.kind === 'plate';
  const outline = plate ? square(on(at), wide, turned) : circleOutline(on(at), wide / 2);
  return inked(detailPens.hole, outline);
};

/** A post from above, as round or square as it is. */
export const postCircle = ({ post, at, turned }: SightPost, on: OnPaper, ratio: number): Atom[] => {
  const od = post.od / ratio;
  const outline =
    post.section === 'square' ? square(on(at), od, turned) : circleOutline(on(at), od / 2);
  return hiding(detailPens.post, outline);
};
