import { distance } from '../geometry/distance.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { FenceLine } from './fenceLine.ts';
import type { LineId, MarkId } from './ids.ts';
import { placesInside } from './placesInside.ts';
import { verticesOf } from './pathOrder.ts';
import type { Site } from './site.ts';
import { withEntries, withEntry } from './withEntries.ts';

/** A line that follows nothing any more stands where it stood. */
const letGo = (site: Site, id: LineId, line: FenceLine): Site =>
  withEntry(site, 'lines', id, { ...line, follows: null });

/** The places in the order in which the line runs, which may have been turned round since. */
const nearer = (
  { marks }: Site,
  own: ReturnType<typeof verticesOf>,
  places: readonly SitePoint[],
): readonly SitePoint[] => {
  const off = (order: readonly SitePoint[]): number =>
    own.reduce((sum, { mark }, n) => {
      const [was, at] = [marks[mark], order[n]];
      return was === undefined || at === undefined ? sum : sum + distance(was, at);
    }, 0);
  const turned = places.toReversed();
  return off(turned) < off(places) ? turned : places;
};

const placed = (site: Site, id: LineId, line: FenceLine, byHand: ReadonlySet<MarkId>): Site => {
  const { follows } = line;
  if (follows === null) return site;
  const boundary = site.features[follows.feature];
  const own = verticesOf(line.path);
  if (boundary?.kind !== 'boundary' || boundary.closed !== line.closed)
    return letGo(site, id, line);
  const along = new Set(verticesOf(boundary.path).map(({ mark }) => mark));
  const places = placesInside(site, boundary, follows.inside);
  const taken = own.some(({ mark }) => byHand.has(mark) && !along.has(mark));
  const moved = verticesOf(boundary.path).some(({ mark }) => byHand.has(mark));
  if (places.length !== own.length || (taken && !moved)) return letGo(site, id, line);
  const told = nearer(site, own, places);
  const marks = own.flatMap(({ mark }, n) => {
    const [was, at] = [site.marks[mark], told[n]];
    return was === undefined || at === undefined ? [] : [[mark, { ...was, ...at }] as const];
  });
  return withEntries(site, 'marks', Object.fromEntries(marks));
};

/**
 * The site with every line that follows a boundary so far inside it as it was asked to be, after
 * some marks were moved by hand. A line of which a mark alone was moved, or whose boundary has other
 * corners now, follows no more and stays where it is.
 */
export const followed = (site: Site, byHand: readonly MarkId[] = []): Site => {
  const moved = new Set(byHand);
  return (Object.entries(site.lines) as [LineId, FenceLine][]).reduce(
    (so, [id, line]) => (line.follows === null ? so : placed(so, id, line, moved)),
    site,
  );
};
