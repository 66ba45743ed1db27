import type { SitePoint } from '../../geometry/point.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { MarkId, ObservationId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import { partOf, type Part } from './bodies.ts';
import { checkedFrom } from './checkingTape.ts';
import { frameFrom } from './frame.ts';
import { unknown } from './freedoms.ts';
import { gatePlaces, type Stood } from './gatePlaces.ts';
import { heldAmong, type Held } from './held.ts';
import { helpfulTape } from './helpfulTape.ts';
import { judge, type Judged } from './judged.ts';
import type { Network } from './networks.ts';
import type { Places } from './rows.ts';
import { strengthOf, type Strength } from './strength.ts';
import { unsurveyed, type Reading, type Suspect, type Survey } from './survey.ts';
import { networkKey, networksOf, sightingsOf } from './surveyed.ts';

/** Of more marks nobody waits for what holds them. Ours, no published source. */
export const mostMarks = 400;

type Readings = readonly (readonly [ObservationId, Reading])[];

/** The marks that have to be held: those of fence, and those that anything firm was observed of. */
const concerned = (site: Site, taped: readonly MarkId[] = tapedIn(site)): MarkId[] => {
  const fence = Object.values<FenceLine>(site.lines).flatMap(({ path }) =>
    Object.values(path).map(({ mark }) => mark),
  );
  return [...new Set([...fence, ...taped])].toSorted();
};

const tapedIn = (site: Site): MarkId[] => {
  const taped = new Set<MarkId>();
  for (const seen of Object.values<Observation>(site.observations)) {
    if (seen.kind === 'fix') continue;
    for (const id of Object.values(marksObserved(seen))) taped.add(id);
  }
  return [...taped].toSorted();
};

/** The networks of all that is firm: what satellites found holds nothing and checks nothing. */
const firmNetworks = (site: Site): Network[] =>
  networksOf(
    site,
    sightingsOf(site).filter(({ seen }) => seen.kind !== 'fix'),
  );

/** What is found of a network by itself. */
interface Found {
  readonly network: Network;
  readonly strength: Strength;
  readonly judged: Judged;
}

const foundIn = (site: Site, carry: Carry): Found[] =>
  firmNetworks(site).map((network) => {
    const { id, from } = networkKey(network);
    return carry.shelf<Found>('network').take(id, from, () => {
      const frame = frameFrom(network, carry);
      const strength = strengthOf(network, network.spots, unknown, frame);
      return { network, strength, judged: judge(network, strength) };
    });
  });

const partsOf = (found: readonly Found[], carry: Carry): Part[] =>
  found.map((one) => {
    const { network, strength } = one;
    const id = network.sightings[0]?.id ?? '';
    return carry.shelf<Part>('part').take(id, [one], () => partOf(network, strength));
  });

const placesOf = (site: Site, marks: readonly MarkId[]): Places =>
  new Map(
    marks.flatMap((id): [MarkId, SitePoint][] => {
      const mark: Mark | undefined = site.marks[id];
      return mark === undefined ? [] : [[id, { x: mark.x, y: mark.y }]];
    }),
  );

/**
 * What holds among the marks of a site that have to be held, where they stand by what was observed
 * already; with it the expected error of whatever stands on them. Null for more than `mostMarks`.
 */
export const heldOf = (
  site: Site,
  carry: Carry,
  found: readonly Found[] = foundIn(site, carry),
  marks: readonly MarkId[] = concerned(site),
): Held | null => {
  if (marks.length > mostMarks) return null;
  const parts = partsOf(found, carry);
  const places = placesOf(site, marks);
  const fixed = marks.filter((id) => site.marks[id]?.fixed === true);
  const from = [...parts, ...[...places].flatMap(([id, { x, y }]) => [id, x, y]), ...fixed];
  return carry.shelf<Held>('held').take('site', from, () => heldAmong(places, parts, fixed));
};

type Holding = Pick<Survey, 'loose' | 'ways' | 'helps' | 'body'>;

/** What of it a survey tells; of too many marks that all are loose. */
const holdingOf = (
  site: Site,
  held: Held | null,
  marks: readonly MarkId[],
  carry: Carry,
): Holding => {
  if (held === null) return { loose: marks, ways: {}, helps: null, body: null };
  const { body, loose } = held;
  const places = placesOf(site, marks);
  return {
    loose: loose.map(({ mark }) => mark),
    ways: Object.fromEntries(loose.map(({ mark, ways }) => [mark, ways] as const)),
    body: body !== null && body.marks.size > 2 ? { marks: body.marks, fast: body.fast } : null,
    helps: carry
      .shelf<Survey['helps']>('helps')
      .take('site', [held, site.trusts], () => helpfulTape(held, places, site.trusts)),
  };
};

const standsBy = (
  { loose, suspects }: Pick<Survey, 'loose' | 'suspects'>,
  readings: Readings,
): Survey['stands'] => {
  if (suspects.length > 0) return 'disagrees';
  if (loose.length > 0) return 'loose';
  return readings.some(([, { redundancy }]) => redundancy < checkedFrom) ? 'unchecked' : 'held';
};

/** Nothing that stands on the marks. */
const bareGround: Stood = { lines: {}, gates: {} };

/**
 * What the observations of a site say of themselves, of its marks and of the gates that stand between
 * them, where the marks stand by them already. What no edit touched is taken over from the layout before. Never throws.
 */
export const surveyOf = (site: Site, carry: Carry, stood: Stood = bareGround): Survey => {
  const taped = tapedIn(site);
  const found = foundIn(site, carry);
  const judged = found.map((one) => one.judged);
  const readings = judged.flatMap((one) => one.readings);
  const sums = {
    readings: Object.fromEntries(readings),
    spare: judged.reduce((sum, one) => sum + one.spare, 0),
    squares: judged.reduce((sum, one) => sum + one.squares, 0),
    more: judged.some((one) => one.more),
    settled: judged.every((one) => one.settled),
  };
  if (taped.length === 0) return { ...unsurveyed, ...sums };
  const suspects = judged
    .flatMap((one) => one.suspects)
    .toSorted((a, b) => sizeOf(b, readings) - sizeOf(a, readings));
  const marks = concerned(site, taped);
  const held = heldOf(site, carry, found, marks);
  const holding = holdingOf(site, held, marks, carry);
  const large = held === null && suspects.length === 0;
  const stands = large ? 'large' : standsBy({ ...holding, suspects }, readings);
  const places = held === null ? {} : gatePlaces(site, { held, stood, carry });
  return { ...sums, ...holding, places, taped, suspects, stands };
};

const sizeOf = ({ ids: [id] }: Suspect, readings: Readings): number =>
  Math.abs(readings.find(([one]) => one === id)?.[1].standardised ?? 0);
