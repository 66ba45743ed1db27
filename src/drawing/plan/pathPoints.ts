import type { SitePoint } from '../../geometry/point.ts';
import type { Path } from '../../site/path.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';

/** The ground points that a path passes, in order; marks that the site lacks are passed over. */
export const pathPoints = ({ marks }: Pick<Site, 'marks'>, path: Path): SitePoint[] =>
  verticesOf(path).flatMap(({ mark }) => marks[mark] ?? []);
