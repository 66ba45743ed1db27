import { removeCorner } from '../../../site/edits/removeCorner.ts';
import { removeVertex } from '../../../site/edits/removeVertex.ts';
import type { FeatureId, LineId, MarkId } from '../../../site/ids.ts';
import { leastMarks } from '../../../site/leastMarks.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import type { Site } from '../../../site/site.ts';
import { featureNoun } from '../../../site/featureNoun.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Something that passes a mark and can do without it. */
export interface Spare {
  readonly key: string;
  /** What it is called: its own name, else its kind. */
  readonly name: string;
  readonly without: (site: Site) => Site;
}

/** What a mark can be taken out of: lines of more than one leg, ground with a corner to spare. */
export const spareMarks = (site: Site, mark: MarkId): Spare[] => {
  const lines = (Object.entries(site.lines) as [LineId, Site['lines'][LineId]][]).flatMap(
    ([id, { label, path }]): Spare[] => {
      const vertices = verticesOf(path);
      const here = vertices.find((vertex) => vertex.mark === mark);
      if (here === undefined || vertices.length <= 2) return [];
      const name = label === '' ? phrase`fence line` : label;
      return [{ key: here.id, name, without: (was) => removeVertex(was, id, here.id) }];
    },
  );
  const features = (
    Object.entries(site.features) as [FeatureId, Site['features'][FeatureId]][]
  ).flatMap(([id, feature]): Spare[] => {
    if (!('path' in feature)) return [];
    const vertices = verticesOf(feature.path);
    const here = vertices.find((vertex) => vertex.mark === mark);
    if (here === undefined || vertices.length <= leastMarks(feature)) return [];
    const name = feature.label === '' ? featureNoun(feature) : feature.label;
    return [{ key: here.id, name, without: (was) => removeCorner(was, id, here.id) }];
  });
  return [...lines, ...features];
};
