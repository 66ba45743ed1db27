import type { Feature } from '../../site/feature.ts';
import type { MarkId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import type { Layout } from '../layout.ts';
import { asItIs, phrase } from '../../phrases/phrase.ts';
import { featureWords } from '../../site/featureWords.ts';

const oneLine = (text: string): string => asItIs(text.replace(/\s+/g, ' ').trim());

/** What of a feature stands at a mark: `House corner 2`, `Fuel line mark 1`, `Oak`; null for nothing. */
const partName = (feature: Feature, id: MarkId): string | null => {
  const name = oneLine(feature.label) || featureWords[feature.kind];
  if (!('path' in feature)) return feature.mark === id ? name : null;
  const at = verticesOf(feature.path).findIndex(({ mark }) => mark === id);
  if (at === -1) return null;
  const open = feature.kind === 'utility' || (feature.kind === 'boundary' && !feature.closed);
  return open ? phrase`${name} mark ${at + 1}` : phrase`${name} corner ${at + 1}`;
};

/**
 * What a mark is called where it is spoken of: by its own name, else by the feature that has it, else
 * by the post that stands at it, else by its number in the document.
 */
export const markName = (site: Site, posts: Layout['posts'], id: MarkId): string => {
  const own = oneLine(site.marks[id]?.label ?? '');
  if (own !== '') return own;
  for (const feature of Object.values<Feature>(site.features)) {
    const name = partName(feature, id);
    if (name !== null) return name;
  }
  const post = posts.get(`post:${id}`);
  return post === undefined ? phrase`mark ${id.slice(5)}` : phrase`post ${post.tag}`;
};
