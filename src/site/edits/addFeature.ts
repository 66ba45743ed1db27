import type { Feature, FeatureFields } from '../feature.ts';
import { checked } from '../checked.ts';
import { featureSchema } from '../feature.ts';
import type { MarkId, VertexId } from '../ids.ts';
import { leastMarks } from '../leastMarks.ts';
import { limits } from '../limits.ts';
import { markAt } from '../markAt.ts';
import type { Place } from '../markAt.ts';
import { nextId, nextIds } from '../nextId.ts';
import { freshOrders } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';
import { featureWords } from '../../site/featureWords.ts';

/**
 * Adds a feature under `nextId(site, 'feature')`, at marks that are there or points that become
 * marks: one for a tree or note, two or more for a utility or open boundary, three or more for
 * what is closed. RangeError for an unknown mark, another number of places, and a wrong field.
 */
export const addFeature = (site: Site, fields: FeatureFields, places: readonly Place[]): Site => {
  const [least, most] = span(fields);
  if (places.length < least || places.length > most) {
    const range = least === most ? `${least}` : phrase`${least} to ${most}`;
    throw new RangeError(
      phrase`features: expected a ${featureWords[fields.kind]} with ${range} marks, found ${places.length}`,
    );
  }
  let marked = site;
  const marks = places.map((place) => {
    const reached = markAt(marked, place);
    marked = reached.site;
    return reached.mark;
  });
  const id = nextId(site, 'feature');
  const feature = checked(featureSchema, withMarks(site, fields, marks), ['features', id]);
  return withEntry(marked, 'features', id, feature as Feature);
};

const span = (fields: FeatureFields): readonly [least: number, most: number] => {
  const least = leastMarks(fields);
  return [least, least === 1 ? 1 : limits.path];
};

const withMarks = (site: Site, fields: FeatureFields, marks: readonly MarkId[]): unknown => {
  if (fields.kind === 'tree' || fields.kind === 'note') return { ...fields, mark: marks[0] };
  const ids: readonly VertexId[] = nextIds(site, 'vertex', marks.length);
  const orders = freshOrders(marks.length);
  const path = Object.fromEntries(marks.map((mark, n) => [ids[n], { mark, order: orders[n] }]));
  return { ...fields, path };
};
