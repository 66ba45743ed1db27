import type { GateSight } from './gateSight.ts';

/** Along the gate, inches. */
type Stretch = readonly [number, number];

/**
 * The gaps that its latches span, along the gate from left to right, inches: from the free end of a leaf to the
 * post, to the other leaf, or to the stop between them. None of a gap.
 */
export const catches = ({ pair, stands, leaves, slides }: GateSight): readonly Stretch[] => {
  const [, end] = pair;
  const tips = [
    ...leaves.map(({ to, way }) => ({ at: to, way })),
    ...slides.map(({ closed: [tail, front] }) => ({ at: front, way: front > tail ? 1 : -1 })),
  ];
  const [one, other] = tips;
  if (one === undefined) return [];
  const stop = stands.find(({ post }) => post.kind === 'stop');
  if (other === undefined) {
    return one.way > 0 ? [[one.at, end.at.x - end.post.od / 2]] : [[0, one.at]];
  }
  if (stop === undefined) return [[one.at, other.at]];
  const half = stop.post.od / 2;
  return [
    [one.at, stop.at.x - half],
    [stop.at.x + half, other.at],
  ];
};
