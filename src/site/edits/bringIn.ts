import { spot } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { offers, type Becomes } from '../becomes.ts';
import type { Feature } from '../feature.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { FenceSpec } from '../fenceSpec.ts';
import type { Found, FoundGroup, FoundPath, FoundPoint, HeightLimits } from '../found.ts';
import type { MarkId, SpecId, VertexId } from '../ids.ts';
import { leastMarks } from '../leastMarks.ts';
import { limits } from '../limits.ts';
import { marksOn } from '../marksOn.ts';
import { nextIds } from '../nextId.ts';
import type { Path } from '../path.ts';
import { freshOrders } from '../pathOrder.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { straightened } from '../straightened.ts';
import { withEntries } from '../withEntries.ts';
import { addShots } from './addShots.ts';
import { addSpec } from './addSpec.ts';
import { phrase } from '../../phrases/phrase.ts';

type HeightZone = Extract<Feature, { kind: 'height zone' }>;
type Utility = Extract<Feature, { kind: 'utility' }>;

/** What a person chose of what a file has. */
export interface BringChoices {
  /** By the keys of its groups; a group that is not named is left out. */
  readonly becomes: Readonly<Record<string, Becomes>>;
  /** What fence lines are built as; null where there are none. A site that has the id keeps its own. */
  readonly fence: { readonly id: SpecId; readonly spec: FenceSpec } | null;
  readonly utility: Pick<Utility, 'width' | 'tolerance'>;
  /** How high fence may stand in ground with a limit of which the file tells none. */
  readonly heights: Readonly<Record<HeightZone['of'], HeightLimits>>;
  /** How far inside their arcs the straight pieces of what has no curves may lie, inches. */
  readonly chord: Inches;
}

/** A path that was chosen, and the corners that it has by their marks. */
interface Line {
  readonly becomes: Becomes;
  readonly path: FoundPath;
}

interface Spot {
  readonly becomes: Becomes;
  readonly point: FoundPoint;
}

const choiceOf = (group: FoundGroup, { becomes }: BringChoices): Becomes => {
  const choice = Object.hasOwn(becomes, group.key) ? becomes[group.key] : undefined;
  if (choice === undefined) return 'leave out';
  if (offers[group.shape].includes(choice)) return choice;
  throw new RangeError(
    phrase`${group.layer}: expected ${offers[group.shape].join(phrase` or `)}, found ${quoted(choice)}`,
  );
};

/** Corners of all lines that are looked at: more than become marks, since neighbours have corners in common. */
const mostCorners = 10 * limits.marks;

interface Chosen {
  readonly group: FoundGroup;
  readonly becomes: Becomes;
}

/** The chosen lines, arcs in straight pieces where they become no fence. RangeError for more corners than are looked at. */
const linesOf = (chosen: readonly Chosen[], chord: Inches): Line[] => {
  const lines: Line[] = [];
  let corners = 0;
  for (const { group, becomes } of chosen) {
    if (!('paths' in group) || becomes === 'leave out') continue;
    const straight = becomes !== 'fence line';
    for (const path of group.paths) {
      lines.push({ becomes, path: straight ? straightened(path, chord) : path });
      corners += lines.at(-1)?.path.points.length ?? 0;
      if (corners > mostCorners) {
        throw new RangeError(
          phrase`${group.layer}: expected at most ${mostCorners} corners in all lines, found more: leave some layers out`,
        );
      }
    }
  }
  return lines;
};

const spotsOf = (group: FoundGroup, becomes: Becomes): Spot[] =>
  'points' in group && becomes !== 'leave out'
    ? group.points.map((point) => ({ becomes, point }))
    : [];

const checkRoom = (site: Site, name: 'features' | 'lines', more: number): void => {
  const count = Object.keys(site[name]).length + more;
  if (more === 0 || count <= limits[name]) return;
  throw new RangeError(
    phrase`${name}: expected at most ${limits[name]} entries, found ${count}: leave some layers out`,
  );
};

/** A corner of a path: its mark, and the bow of the leg that starts there. */
interface Corner {
  readonly mark: MarkId;
  readonly bow: number;
}

/** The corners of a path, no mark twice in a row. RangeError for one that lies on too few spots. */
const cornersOf = ({ path, becomes }: Line, marks: readonly MarkId[]): Corner[] => {
  const all = marks.map((mark, n) => ({ mark, bow: path.bows[n] ?? 0 }));
  const corners = all.filter(({ mark }, n) => {
    const next = all[n + 1] ?? (path.closed && n > 0 ? all[0] : undefined);
    return next?.mark !== mark;
  });
  const kind = becomes === 'fence line' || becomes.startsWith('utility') ? 'utility' : 'boundary';
  const least = leastMarks({ kind, closed: path.closed });
  if (corners.length >= least) return corners;
  throw new RangeError(
    phrase`${quoted(path.name)}: expected ${least} corners more than 1/64 in apart, found ${corners.length}`,
  );
};

const pathOf = (corners: readonly Corner[], ids: readonly VertexId[]): Path => {
  const orders = freshOrders(corners.length);
  return Object.fromEntries(
    corners.map(({ mark }, n) => [ids[n] ?? '', { mark, order: orders[n] ?? '' }]),
  );
};

const featureOf = (
  { becomes, path: { name: label, closed, limits: told } }: Line,
  path: Path,
  { utility, heights }: Pick<BringChoices, 'utility' | 'heights'>,
): Feature => {
  if (becomes === 'boundary') return { kind: 'boundary', label, closed, setback: inches(0), path };
  if (becomes === 'building' || becomes === 'paving' || becomes === 'pool') {
    return { kind: becomes, label, path };
  }
  if (becomes === 'keep-out') return { kind: becomes, label, path };
  if (becomes === 'sight triangle' || becomes === 'front yard') {
    const { solid, open } = told ?? heights[becomes];
    return { kind: 'height zone', label, of: becomes, solid, open, path };
  }
  const service = becomes.replace('utility, ', '') as Utility['service'];
  return { kind: 'utility', label, run: 'buried', service, ...utility, path };
};

const fenceOf = (
  { path: { name: label, closed } }: Line,
  corners: readonly Corner[],
  ids: readonly VertexId[],
  spec: SpecId,
): FenceLine => ({
  label,
  spec,
  closed,
  hook: 'start',
  path: pathOf(corners, ids),
  stepped: {},
  curved: Object.fromEntries(
    corners.flatMap(({ bow }, n) =>
      Math.abs(bow) < spot || (!closed && n === corners.length - 1)
        ? []
        : [[ids[n] ?? '', inches(bow)]],
    ),
  ),
  walls: {},
  follows: null,
  guards: null,
});

interface Cornered {
  readonly line: Line;
  readonly corners: readonly Corner[];
  readonly ids: readonly VertexId[];
}

/** The corners of lines whose marks stand one after another in `marks`, with ids for their vertices. */
const cornered = (site: Site, lines: readonly Line[], marks: readonly MarkId[]): Cornered[] => {
  let at = 0;
  const found = lines.map((line) => {
    const own = marks.slice(at, at + line.path.points.length);
    at += own.length;
    return { line, corners: cornersOf(line, own) };
  });
  const ids = nextIds(site, 'vertex', at);
  let from = 0;
  return found.map(({ line, corners }) => {
    const own = ids.slice(from, from + corners.length);
    from += own.length;
    return { line, corners, ids: own };
  });
};

/** Entries under the next ids of their kind. */
const numbered = <Kind extends 'line' | 'feature', T>(
  site: Site,
  kind: Kind,
  entries: readonly T[],
): Record<string, T> => {
  const ids = nextIds(site, kind, entries.length);
  return Object.fromEntries(entries.map((entry, n) => [ids[n] ?? '', entry]));
};

const withFences = (
  site: Site,
  fences: readonly Cornered[],
  fence: BringChoices['fence'],
): Site => {
  if (fences.length === 0) return site;
  if (fence === null)
    throw new RangeError(phrase`specs: expected a spec for fence lines, found nothing`);
  const lines = fences.map(({ line, corners, ids }) => fenceOf(line, corners, ids, fence.id));
  return withEntries(addSpec(site, fence.id, fence.spec), 'lines', numbered(site, 'line', lines));
};

const withShots = (site: Site, spots: readonly Spot[]): Site => {
  const shots = spots.flatMap(({ becomes, point: { at, z, name } }) =>
    becomes === 'grade shot' && z !== null ? [{ x: at.x, y: at.y, z, label: name }] : [],
  );
  return shots.length === 0 ? site : addShots(site, shots);
};

/**
 * Brings what a person chose of a file onto a site, in one edit: closed ground and open lines as
 * features or fence lines, points and texts as marks, notes and grade shots. Points on one spot (1/64
 * in) become one mark, and a mark that stands there already is used. A site that does not know where on
 * earth it is learns it from a file that does. RangeError with one line for a choice that a group does
 * not offer, for more than a site holds, and where a fence line has no spec.
 */
export const bringIn = (site: Site, found: Found, choices: BringChoices): Site => {
  const chosen = found.groups.map((group) => ({ group, becomes: choiceOf(group, choices) }));
  const lines = linesOf(chosen, choices.chord);
  const spots = chosen.flatMap(({ group, becomes }) => spotsOf(group, becomes));
  const notes = spots.filter(({ becomes }) => becomes === 'note');
  const marks = spots.filter(({ becomes }) => becomes === 'mark');
  const isFence = ({ becomes }: Line) => becomes === 'fence line';
  checkRoom(site, 'lines', lines.filter(isFence).length);
  checkRoom(site, 'features', lines.filter((line) => !isFence(line)).length + notes.length);
  const on = marksOn(site, [
    ...lines.flatMap(({ path }) => path.points.map((at) => ({ at, name: '' }))),
    ...notes.map(({ point: { at } }) => ({ at, name: '' })),
    ...marks.map(({ point }) => point),
  ]);
  const all = cornered(site, lines, on.marks);
  const corners = lines.reduce((sum, { path }) => sum + path.points.length, 0);
  const features = all
    .filter(({ line }) => !isFence(line))
    .map(({ line, corners: own, ids }): Feature => featureOf(line, pathOf(own, ids), choices));
  const noted = notes.map(({ point: { name } }, n): Feature => {
    return { kind: 'note', label: '', mark: on.marks[corners + n] ?? 'mark:1', text: name };
  });
  const fenced = withFences(
    on.site,
    all.filter(({ line }) => isFence(line)),
    choices.fence,
  );
  const entries = numbered(site, 'feature', [...features, ...noted]);
  const featured =
    features.length + noted.length === 0 ? fenced : withEntries(fenced, 'features', entries);
  const shot = withShots(featured, spots);
  if (shot === site || site.origin !== null || found.origin === null) return shot;
  return { ...shot, origin: found.origin };
};
