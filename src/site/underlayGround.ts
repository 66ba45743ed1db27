import { shownGround } from '../geometry/shownGround.ts';
import type { SitePoint } from '../geometry/point.ts';
import { tiesOf } from './tiesOf.ts';
import type { Underlay } from './underlay.ts';

const known = new WeakMap<Underlay['ties'], readonly SitePoint[]>();

/** The ground that a picture shows where it lies, inches; remembered for its ties. */
export const underlayGround = (underlay: Underlay): readonly SitePoint[] => {
  const found = known.get(underlay.ties);
  if (found !== undefined) return found;
  const { width, height } = underlay;
  const ground = shownGround({ width, height, ties: tiesOf(underlay) });
  known.set(underlay.ties, ground);
  return ground;
};
