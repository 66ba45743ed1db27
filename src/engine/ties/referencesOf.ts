import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { FeatureId, MarkId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { oneLine } from '../checks/names.ts';
import type { Layout } from '../layout.ts';
import { loneMarks } from '../walk/loneMarks.ts';
import { roughMarks } from '../walk/roughMarks.ts';
import { cornerNames, endNames } from './cornerNames.ts';
import { featureNames, type Outline } from './featureNames.ts';
import type { Reference } from './reference.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Marks nearer to each other are one place to hook a tape at, inches; ours. */
const onePlace = 6;

/** What a tape can be hooked at, the better to find the earlier; keep-out, services and notes are no marks. */
const order: readonly Reference['of'][] = [
  'building',
  'mark',
  'paving',
  'pool',
  'boundary',
  'tree',
] as const;

interface Thing extends Outline {
  readonly of: Reference['of'];
  readonly closed: boolean;
  readonly marks: readonly MarkId[];
}

const thingOf = (site: Site, id: FeatureId, feature: Feature): Thing[] => {
  const of = order.find((kind) => kind === feature.kind);
  if (of === undefined) return [];
  const ids = 'path' in feature ? verticesOf(feature.path).map(({ mark }) => mark) : [feature.mark];
  const marks = ids.filter((mark) => site.marks[mark] !== undefined);
  const points = marks.flatMap((mark) => site.marks[mark] ?? []);
  const closed = feature.kind !== 'boundary' || feature.closed;
  return [{ id, label: feature.label, kind: feature.kind, of, closed, marks, points }];
};

type Named = Omit<Reference, 'sketched'>;

/** The corners of a thing by their own names, else by where they lie; of a tree its middle. */
const cornersOf = (site: Site, thing: Thing, name: string): Named[] => {
  const { of, closed, marks, points } = thing;
  const places = closed ? cornerNames(points) : endNames(points);
  return marks.flatMap((mark, n): Named[] => {
    const at: SitePoint | undefined = points[n];
    if (at === undefined) return [];
    const own = oneLine(site.marks[mark]?.label);
    const there = of === 'tree' ? phrase`middle of the trunk` : (places[n] ?? '');
    return [{ mark, at: { x: at.x, y: at.y }, of, name: own === '' ? `${name}, ${there}` : own }];
  });
};

const loneOf = (site: Site): Named[] =>
  loneMarks(site).flatMap(({ id, mark }): Named[] => {
    const name = oneLine(mark.label);
    return name === '' ? [] : [{ mark: id, at: { x: mark.x, y: mark.y }, of: 'mark', name }];
  });

/** The first of those that are one place, and no name twice. */
const apart = (all: readonly Named[]): Named[] => {
  const kept: Named[] = [];
  const cells = new Map<string, Named[]>();
  const key = (x: number, y: number): string => `${x}:${y}`;
  const names = new Map<string, number>();
  for (const one of all) {
    const [x, y] = [Math.floor(one.at.x / onePlace), Math.floor(one.at.y / onePlace)];
    const near = [-1, 0, 1].flatMap((i) =>
      [-1, 0, 1].flatMap((j) => cells.get(key(x + i, y + j)) ?? []),
    );
    if (near.some(({ at }) => distance(at, one.at) < onePlace)) continue;
    const times = (names.get(one.name) ?? 0) + 1;
    names.set(one.name, times);
    cells.set(key(x, y), [...(cells.get(key(x, y)) ?? []), one]);
    kept.push(times === 1 ? one : { ...one, name: `${one.name} (${times})` });
  }
  return kept;
};

/** Whether a mark is held by what was read, where anything was. */
const isSketched = (site: Site, { survey }: Layout, mark: MarkId): boolean => {
  if (survey.stands === 'sketched' || survey.stands === 'large') return false;
  return site.marks[mark]?.fixed !== true && survey.body?.marks.has(mark) !== true;
};

/**
 * What on a site a tape can be hooked at before there is any fence: corners of buildings, lone marks
 * with a name, corners of paving and pools, of boundaries, and trees; each named as a crew finds it.
 * None that only satellites tell of, and no marks of fence.
 */
export const referencesOf = (site: Site, layout: Layout): readonly Reference[] => {
  const rough = roughMarks(site);
  const features = Object.entries(site.features) as [FeatureId, Feature][];
  const things = features.flatMap(([id, feature]) => thingOf(site, id, feature));
  const names = featureNames(things);
  const all = [
    ...loneOf(site),
    ...things.flatMap((thing) => cornersOf(site, thing, names.get(thing.id) ?? thing.kind)),
  ].filter(({ mark }) => !rough.has(mark));
  const sorted = all.toSorted((a, b) => order.indexOf(a.of) - order.indexOf(b.of));
  return apart(sorted).map((one) => ({ ...one, sketched: isSketched(site, layout, one.mark) }));
};
