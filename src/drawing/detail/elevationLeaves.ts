import { isWoven } from '../../site/isWoven.ts';
import type { Atom } from '../atom.ts';
import { circleOutline } from '../explode/polylineOutline.ts';
import { detailPens } from './detailPens.ts';
import { boxOutline, hiding, inked } from './drawn.ts';
import type { GateSight, SightLeaf, SightSlide } from './gateSight.ts';
import { leaning } from './leaning.ts';
import type { OnPaper } from './onPaper.ts';

/** Between the wires of fabric as it is drawn: paper inches, far wider than they are. */
const mesh = 0.12;

/** A frame as it hangs: along the gate from one side to the other, its height and pipe; inches. */
interface Frame {
  readonly sides: readonly [number, number];
  readonly bottom: number;
  readonly height: number;
  readonly frame: number;
}

/** The four pipes of a frame: what is behind them is hidden, what is behind the fabric is not. */
const frameAtoms = ({ sides, bottom, height, frame }: Frame, on: OnPaper): Atom[] => {
  const [left, right] = [Math.min(...sides), Math.max(...sides)];
  const top = bottom + height;
  const outer = boxOutline(on({ x: left, y: bottom }), on({ x: right, y: top }));
  const inner = boxOutline(
    on({ x: left + frame, y: bottom + frame }),
    on({ x: right - frame, y: top - frame }),
  );
  // even-odd: only the pipes themselves are filled
  const [fill] = hiding(detailPens.frame, [...outer, ...inner]);
  const edges = [inked(detailPens.frame, outer), inked(detailPens.frame, inner)];
  return fill === undefined ? edges : [fill, ...edges];
};

/** Fabric between two places along the gate, inside of the pipes of a frame. */
const fabricAtoms = (
  { bottom, height, frame }: Frame,
  [left, right]: readonly [number, number],
  on: OnPaper,
): Atom[] => {
  if (right <= left || height <= 2 * frame) return [];
  const from = on({ x: left, y: bottom + frame });
  const to = on({ x: right, y: bottom + height - frame });
  const wires = [...leaning({ from, to }, mesh, 1), ...leaning({ from, to }, mesh, -1)];
  // clipped, so that it is told apart from the lines that letters keep off
  return [{ do: 'clip', outline: boxOutline(from, to), atoms: [inked(detailPens.fabric, wires)] }];
};

/** Least that a small part shows, paper inches: its place is true. */
const least = 0.05;

const hingeAtoms = (leaf: SightLeaf, on: OnPaper): Atom[] =>
  [leaf.lowHinge, leaf.highHinge].flatMap((z) => {
    const face = on({ x: leaf.pin.x, y: z });
    const side = on({ x: leaf.from + leaf.way * leaf.frame, y: z });
    const [from, to] = [
      { x: face.x, y: face.y - least / 2 },
      { x: side.x, y: side.y + least / 2 },
    ];
    return [
      ...hiding(detailPens.hinge, boxOutline(from, to)),
      ...hiding(detailPens.hinge, circleOutline(face, least / 2)),
    ];
  });

/** A leaf that turns, closed, with its two hinges. */
export const leafAtoms = (leaf: SightLeaf, { spec }: GateSight, on: OnPaper): Atom[] => {
  const frame: Frame = { ...leaf, sides: [leaf.from, leaf.to] };
  const inside = [
    Math.min(leaf.from, leaf.to) + leaf.frame,
    Math.max(leaf.from, leaf.to) - leaf.frame,
  ] as const;
  return [
    ...(isWoven(spec) ? fabricAtoms(frame, inside, on) : []),
    ...frameAtoms(frame, on),
    ...hingeAtoms(leaf, on),
  ];
};

/** A leaf that rolls, closed: fabric where it fills the opening, its tail open. */
export const slideAtoms = (slide: SightSlide, { spec }: GateSight, on: OnPaper): Atom[] => {
  const [tail, front] = slide.closed;
  const frame: Frame = { ...slide, sides: slide.closed };
  const way = front > tail ? 1 : -1;
  const ends = [slide.face, front - way * slide.frame];
  const woven = [Math.min(...ends), Math.max(...ends)] as const;
  return [...(isWoven(spec) ? fabricAtoms(frame, woven, on) : []), ...frameAtoms(frame, on)];
};
