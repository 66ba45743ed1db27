import { lineName, oneLine } from '../../engine/checks/names.ts';
import type { Layout } from '../../engine/layout.ts';
import { markName } from '../../engine/survey/markName.ts';
import { featureName } from '../../site/featureName.ts';
import type { Site } from '../../site/site.ts';
import type { Edge } from '../edges.ts';

/** What a leg or a side is called: by what it belongs to, and by its two marks. */
export const edgeName = (
  site: Site,
  { posts }: Pick<Layout, 'posts'>,
  { of, marks }: Edge,
): string => {
  const [from, to] = marks.map((id) => markName(site, posts, id));
  if (of.kind === 'leg') return `${lineName(site, of.line).replace(':', ' ')}, ${from} to ${to}`;
  const feature = site.features[of.feature];
  const name = oneLine(feature?.label) || (feature === undefined ? of.as : featureName(feature));
  return `${name}, ${from} to ${to}`;
};
