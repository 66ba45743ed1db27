import { entry } from '../entry.ts';
import type { Feature } from '../feature.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { FeatureId, LineId, MarkId, VertexId } from '../ids.ts';
import { legsOf } from '../legsOf.ts';
import { marksObserved } from '../marksObserved.ts';
import type { Observation } from '../observation.ts';
import type { Path } from '../path.ts';
import { isClosed } from '../pathFeature.ts';
import { keptBends } from '../keptBends.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntries, withEntry, withoutEntries } from '../withEntries.ts';
import { withoutMarks } from '../withoutMarks.ts';
import { closeLine } from './closeLine.ts';
import { removeCorner } from './removeCorner.ts';
import { removeVertex } from './removeVertex.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Makes one mark of two: whatever stood on `gone` stands on `into`, at its place, and `gone` is no
 * more; the name of `gone` is kept where `into` has none. A leg or side between the two goes, its
 * gates to the next leg. An open line or boundary whose ends are joined is closed. A mark and itself
 * change nothing. RangeError for an unknown mark, for a line of one leg or two whose ends would be
 * one, and for a feature that would keep too few marks.
 */
export const joinMarks = (site: Site, gone: MarkId, into: MarkId): Site => {
  const [old, stays] = [entry(site, 'marks', gone), entry(site, 'marks', into)];
  if (gone === into) return site;
  const named = {
    ...stays,
    label: stays.label === '' ? old.label : stays.label,
    fixed: stays.fixed || old.fixed,
  };
  const stood = restood(withEntries(site, 'marks', { [into]: named }), gone, into);
  const seen = reobserved(stood, gone, into);
  const moved = keptBends(site, seen);
  const lines = passing(moved.lines, into).reduce((so, id) => settledLine(so, id, into), moved);
  const all = passing(lines.features, into).reduce((so, id) => settledFeature(so, id, into), lines);
  return withoutMarks(all, [gone]);
};

/** The site in which what was observed of `gone` is of `into`; what would name it twice goes. */
const reobserved = (site: Site, gone: MarkId, into: MarkId): Site => {
  const changed = Object.entries<Observation>(site.observations).filter(([, seen]) =>
    Object.values(marksObserved(seen)).includes(gone),
  );
  const told = changed.filter(([, seen]) => !Object.values(marksObserved(seen)).includes(into));
  const ofInto = told.map(([id, seen]) => {
    const roles = Object.entries(marksObserved(seen)).filter(([, mark]) => mark === gone);
    return [id, { ...seen, ...Object.fromEntries(roles.map(([role]) => [role, into])) }] as const;
  });
  const lost = changed.filter((found) => !told.includes(found)).map(([id]) => id);
  return withEntries(
    withoutEntries(site, 'observations', lost),
    'observations',
    Object.fromEntries(ofInto),
  );
};

const onto = (path: Path, gone: MarkId, into: MarkId): Path =>
  Object.fromEntries(
    Object.entries(path).map(([id, vertex]) => [
      id,
      vertex.mark === gone ? { ...vertex, mark: into } : vertex,
    ]),
  );

/** The site in which everything on `gone` stands on `into`, twins and all. */
const restood = (site: Site, gone: MarkId, into: MarkId): Site => {
  const lines = (Object.entries(site.lines) as [LineId, FenceLine][]).map(
    ([id, line]) => [id, { ...line, path: onto(line.path, gone, into) }] as const,
  );
  const features = (Object.entries(site.features) as [FeatureId, Feature][]).map(
    ([id, feature]): [FeatureId, Feature] => {
      if ('path' in feature) return [id, { ...feature, path: onto(feature.path, gone, into) }];
      return [id, feature.mark === gone ? { ...feature, mark: into } : feature];
    },
  );
  const fenced = withEntries(site, 'lines', Object.fromEntries(lines));
  return withEntries(fenced, 'features', Object.fromEntries(features));
};

/** The entries of a map that pass a mark. */
const passing = <Id extends string>(map: Readonly<Record<Id, object>>, mark: MarkId): Id[] =>
  (Object.entries(map) as [Id, { readonly path?: Path }][])
    .filter(([, { path = {} }]) => Object.values(path).some((vertex) => vertex.mark === mark))
    .map(([id]) => id);

/** The vertex at the far end of the first leg that begins and ends at a mark; null for none. */
const twin = (thing: Pick<FenceLine, 'path' | 'closed'>, mark: MarkId): VertexId | null =>
  legsOf(thing).find(({ start, end }) => start === mark && end === mark)?.next ?? null;

/** Whether a path that is open has come back to where it began, at a mark. */
const cameBack = ({ path, closed }: Pick<FenceLine, 'path' | 'closed'>, mark: MarkId): boolean => {
  const vertices = verticesOf(path);
  return (
    !closed && vertices.length > 1 && vertices[0]?.mark === mark && vertices.at(-1)?.mark === mark
  );
};

const settledLine = (site: Site, id: LineId, mark: MarkId): Site => {
  const line = entry(site, 'lines', id);
  const again = twin(line, mark);
  if (again === null) return cameBack(line, mark) ? closeLine(site, id) : site;
  if (Object.keys(line.path).length <= 2) {
    throw new RangeError(
      phrase`These marks are the two ends of one leg: expected ends that can meet`,
    );
  }
  return settledLine(removeVertex(site, id, again), id, mark);
};

const settledFeature = (site: Site, id: FeatureId, mark: MarkId): Site => {
  const feature = entry(site, 'features', id);
  if (!('path' in feature)) return site;
  const again = twin({ path: feature.path, closed: isClosed(feature) }, mark);
  if (again !== null) return settledFeature(removeCorner(site, id, again), id, mark);
  const vertices = verticesOf(feature.path);
  const back = feature.kind === 'boundary' && vertices.length > 3 && cameBack(feature, mark);
  if (!back) return site;
  const round = vertices.slice(0, -1).map(({ id: vertex, ...stop }) => [vertex, stop] as const);
  return withEntry(site, 'features', id, {
    ...feature,
    closed: true,
    path: Object.fromEntries(round),
  });
};
