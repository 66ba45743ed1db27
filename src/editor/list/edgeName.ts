import { oneLine } from '../../engine/checks/names.ts';
import type { Layout } from '../../engine/layout.ts';
import { markName } from '../../engine/survey/markName.ts';
import { featureName } from '../../site/featureName.ts';
import { featureWords } from '../../site/featureWords.ts';
import type { Site } from '../../site/site.ts';
import type { Edge } from '../edges.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a leg or a side is called: by what it belongs to, and by its two marks. */
export const edgeName = (
  site: Site,
  { posts }: Pick<Layout, 'posts'>,
  { of, marks }: Edge,
): string => {
  const [from, to] = [markName(site, posts, marks[0]), markName(site, posts, marks[1])];
  if (of.kind === 'leg') {
    const line =
      oneLine(site.lines[of.line]?.label) || phrase`line ${of.line.slice('line:'.length)}`;
    return phrase`${line}, ${from} to ${to}`;
  }
  const feature = site.features[of.feature];
  const name =
    oneLine(feature?.label) || (feature === undefined ? featureWords[of.as] : featureName(feature));
  return phrase`${name}, ${from} to ${to}`;
};
