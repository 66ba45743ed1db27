import { tiesFault } from '../geometry/tiesFault.ts';
import type { Alternative } from './alternative.ts';
import type { Feature } from './feature.ts';
import type { FenceLine } from './fenceLine.ts';
import type { Gate, Leaf } from './gate.ts';
import { leafCounts } from './gateWay.ts';
import type { Hardware } from './hardware.ts';
import type { GateId, LineId, ObservationId, PinId, SpecId, VertexId } from './ids.ts';
import { placeLine } from './issueLine.ts';
import { legsOf } from './legsOf.ts';
import type { Observation } from './observation.ts';
import { marksObserved } from './marksObserved.ts';
import type { Path } from './path.ts';
import type { Pin } from './pin.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';
import type { Underlay } from './underlay.ts';
import { phrase } from '../phrases/phrase.ts';

/** Where it is wrong, what was expected there, what was found. */
type Wrong = readonly [where: readonly string[], expected: string, found: unknown];

const within = (wrongs: readonly Wrong[], ...outer: readonly string[]): Wrong[] =>
  wrongs.map(([where, expected, found]) => [[...outer, ...where], expected, found]);

const wrongKeys = (map: Readonly<Record<string, { readonly order: string }>>): Wrong[] => {
  const seen = new Set<string>();
  return Object.entries(map).flatMap(([id, { order }]): Wrong[] => {
    const again = seen.has(order);
    seen.add(order);
    return again ? [[[id, 'order'], phrase`a key that no other has`, order]] : [];
  });
};

const wrongMark = (site: Site, mark: string): Wrong[] =>
  Object.hasOwn(site.marks, mark) ? [] : [[['mark'], phrase`a mark of this site`, mark]];

const wrongPath = (site: Site, path: Path): Wrong[] => [
  ...Object.entries(path).flatMap(([id, { mark }]) => within(wrongMark(site, mark), 'path', id)),
  ...within(wrongKeys(path), 'path'),
];

const wrongFollows = (site: Site, { follows }: FenceLine): Wrong[] => {
  if (follows === null) return [];
  const { feature } = follows;
  const found = Object.hasOwn(site.features, feature) ? site.features[feature] : undefined;
  return found?.kind === 'boundary'
    ? []
    : [[['follows', 'feature'], phrase`a boundary of this site`, feature]];
};

const wrongLine = (site: Site, line: FenceLine): Wrong[] => [
  ...(Object.hasOwn(site.specs, line.spec)
    ? []
    : ([[['spec'], phrase`a fence spec of this site`, line.spec]] as const)),
  ...wrongPath(site, line.path),
  ...(['stepped', 'curved', 'walls'] as const).flatMap((map) =>
    Object.keys(line[map])
      .filter((id) => !Object.hasOwn(line.path, id))
      .map((id): Wrong => [[map], phrase`a vertex of this line`, id]),
  ),
  ...wrongFollows(site, line),
];

const wrongFeature = (site: Site, feature: Feature): Wrong[] =>
  'path' in feature ? wrongPath(site, feature.path) : wrongMark(site, feature.mark);

const wrongObservation = (site: Site, observation: Observation): Wrong[] => {
  const seen = new Set<string>();
  return Object.entries(marksObserved(observation)).flatMap(([role, mark]): Wrong[] => {
    if (!Object.hasOwn(site.marks, mark)) return [[[role], phrase`a mark of this site`, mark]];
    if (seen.has(mark)) return [[[role], phrase`another mark than the rest of it`, mark]];
    seen.add(mark);
    return [];
  });
};

const wrongTies = ({ ties }: Underlay): Wrong[] => {
  const all = Object.values(ties);
  const fault = tiesFault(all);
  if (fault === null) return [];
  return [[['ties'], phrase`points that say where the picture lies`, `${all.length}: ${fault}`]];
};

/** The vertices of each line at which a leg starts. */
type Starts = ReadonlyMap<string, ReadonlySet<VertexId>>;

const startsOf = (line: FenceLine): ReadonlySet<VertexId> =>
  new Set(legsOf(line).map((leg) => leg.id));

const wrongLeg = ({ line, leg }: Pick<Gate | Pin, 'line' | 'leg'>, starts: Starts): Wrong[] => {
  const legs = starts.get(line);
  if (legs === undefined) return [[['line'], phrase`a fence line of this site`, line]];
  return legs.has(leg) ? [] : [[['leg'], phrase`the start of a leg of ${line}`, leg]];
};

type PartKind = Hardware['kind'];

const partOf = {
  hinge: phrase`a hinge of this site`,
  latch: phrase`a latch or drop rod of this site`,
  closer: phrase`a closer of this site`,
} as const;

const partKinds: Readonly<Record<keyof typeof partOf, readonly PartKind[]>> = {
  hinge: ['hinge'],
  latch: ['latch', 'drop rod'],
  closer: ['closer'],
};

const wrongPart = (site: Site, id: string | null, is: keyof typeof partOf): Wrong[] => {
  const part =
    id !== null && Object.hasOwn(site.hardware, id)
      ? site.hardware[id as `hardware:${string}`]
      : undefined;
  return part !== undefined && partKinds[is].includes(part.kind) ? [] : [[[], partOf[is], id]];
};

const countWords: Readonly<Record<Gate['way']['kind'], string>> = {
  swing: phrase`one leaf or two`,
  'centre stop': phrase`two`,
  cantilever: phrase`one leaf or two`,
  gap: phrase`no leaf`,
};

const wrongCount = ({ way, leaves }: Gate): Wrong[] => {
  const count = Object.keys(leaves).length;
  if (leafCounts[way.kind].includes(count)) return [];
  return [[['leaves'], countWords[way.kind], count]];
};

const wrongLeaf = (site: Site, { way }: Gate, { hinge }: Leaf): Wrong[] => {
  if (way.kind === 'cantilever')
    return hinge === null ? [] : [[['hinge'], phrase`no hinge on a leaf that rolls`, hinge]];
  return within(wrongPart(site, hinge, 'hinge'), 'hinge');
};

const wrongLatch = (site: Site, { way, latch }: Gate): Wrong[] => {
  if (way.kind === 'gap') return latch === null ? [] : [[[], phrase`no latch on a gap`, latch]];
  return wrongPart(site, latch, 'latch');
};

const wrongAsSet = ({ asSet, leaves }: Gate): Wrong[] =>
  (['leaves', 'hinges'] as const).flatMap((map) =>
    Object.keys(asSet?.[map] ?? {})
      .filter((id) => !Object.hasOwn(leaves, id))
      .map((id): Wrong => [[map], phrase`leaves of this gate only`, id]),
  );

const wrongGate = (site: Site, gate: Gate): Wrong[] => [
  ...wrongCount(gate),
  ...within(wrongKeys(gate.leaves), 'leaves'),
  ...Object.entries<Leaf>(gate.leaves).flatMap(([id, leaf]) =>
    within(wrongLeaf(site, gate, leaf), 'leaves', id),
  ),
  ...within(wrongLatch(site, gate), 'latch'),
  ...(gate.closer === null ? [] : within(wrongPart(site, gate.closer, 'closer'), 'closer')),
  ...within(wrongAsSet(gate), 'asSet'),
];

const wrongAlternative = (site: Site, { instead }: Alternative): Wrong[] =>
  (Object.entries(instead) as [SpecId, SpecId][]).flatMap(([of, by]): Wrong[] => {
    const gone = [of, by].find((id) => !Object.hasOwn(site.specs, id));
    if (gone !== undefined) return [[['instead', of], phrase`fence specs of this site`, gone]];
    return of === by ? [[['instead', of], phrase`another fence spec than its own`, by]] : [];
  });

const toldOf = ([where, expected, found]: Wrong): string =>
  phrase`${placeLine(where)}: expected ${expected}, found ${quoted(found)}`;

/** The starts of one line alone. */
const startsFor = (site: Site, line: LineId): Starts => {
  const own = Object.hasOwn(site.lines, line) ? site.lines[line] : undefined;
  return new Map(own === undefined ? [] : [[line, startsOf(own)]]);
};

/** The first reference of one pin that is broken, as one line, else null; as `brokenReference`. */
export const brokenPin = (site: Site, id: PinId, pin: Pin): string | null => {
  const [first] = within(wrongLeg(pin, startsFor(site, pin.line)), 'pins', id);
  return first === undefined ? null : toldOf(first);
};

/** The first reference of one gate that is broken, as one line, else null; as `brokenReference`. */
export const brokenGate = (site: Site, id: GateId, gate: Gate): string | null => {
  const starts = startsFor(site, gate.line);
  const [first] = within([...wrongLeg(gate, starts), ...wrongGate(site, gate)], 'gates', id);
  return first === undefined ? null : toldOf(first);
};

/** The first reference of one observation that is broken, as one line, else null. */
export const brokenObservation = (
  site: Site,
  id: ObservationId,
  seen: Observation,
): string | null => {
  const [first] = within(wrongObservation(site, seen), 'observations', id);
  return first === undefined ? null : toldOf(first);
};

/** Every reference of one entry after the other, until one is wrong. */
function* everyWrong(site: Site): Generator<Wrong> {
  const starts = new Map<string, ReadonlySet<VertexId>>();
  for (const [id, fence] of Object.entries(site.lines) as [LineId, FenceLine][]) {
    yield* within(wrongLine(site, fence), 'lines', id);
    starts.set(id, startsOf(fence));
  }
  for (const [id, gate] of Object.entries(site.gates) as [GateId, Gate][]) {
    yield* within([...wrongLeg(gate, starts), ...wrongGate(site, gate)], 'gates', id);
  }
  for (const [id, pin] of Object.entries(site.pins)) {
    yield* within(wrongLeg(pin, starts), 'pins', id);
  }
  yield* within(wrongKeys(site.levels.notes), 'levels', 'notes');
  for (const [id, feature] of Object.entries(site.features)) {
    yield* within(wrongFeature(site, feature), 'features', id);
  }
  for (const [id, observation] of Object.entries(site.observations)) {
    yield* within(wrongObservation(site, observation), 'observations', id);
  }
  for (const [id, underlay] of Object.entries(site.underlays)) {
    yield* within(wrongTies(underlay), 'underlays', id);
  }
  yield* within(wrongKeys(site.alternatives), 'alternatives');
  for (const [id, alternative] of Object.entries(site.alternatives)) {
    yield* within(wrongAlternative(site, alternative), 'alternatives', id);
  }
}

/**
 * The first thing of a site that points at nothing, as one line, else null: a mark, line, leg,
 * spec or part that is not there, a hinge where a latch belongs, a gate with
 * another number of leaves than its way has, an observation that names one mark twice, a picture tied so that it lies nowhere, two vertices, leaves or
 * alternatives with one order key, an alternative that puts a build in place of itself. A line of fewer than two marks is no fault.
 */
export const brokenReference = (site: Site): string | null => {
  const first = everyWrong(site).next();
  return first.done === true ? null : toldOf(first.value);
};
