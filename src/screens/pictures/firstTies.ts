import { toSite, type Pad } from '../../editor/view.ts';
import { tieOf, type Tie } from '../../geometry/tie.ts';
import type { View } from '../../store/view.ts';

/** How much of the pad a picture takes up when it comes, of whichever way it fills first. */
const share = 0.7;
/** The ground that is taken for what is seen before the pad was on the screen: 100 ft, 1 px to the inch. */
const unseen: Pad = { width: 1200, height: 1200 };

/**
 * The two ties by which a picture that is brought lies in the middle of what is seen, up to the north:
 * nobody has said yet how large it is.
 */
export const firstTies = (
  { width, height }: { readonly width: number; readonly height: number },
  view: View,
  pad: Pad | null,
): readonly [Tie, Tie] => {
  const size = pad ?? unseen;
  const seen = pad === null ? { scale: 1, x: size.width / 2, y: size.height / 2 } : view;
  const times = share * Math.min(size.width / width, size.height / height);
  const [left, top] = [(size.width - width * times) / 2, (size.height - height * times) / 2];
  const corner = (u: number, v: number): Tie =>
    tieOf({ x: u, y: v }, toSite(seen, { x: left + u * times, y: top + v * times }));
  return [corner(0, 0), corner(width, height)];
};
