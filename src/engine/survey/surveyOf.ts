import type { SitePoint } from '../../geometry/point.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { MarkId, ObservationId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import { bodiesOf } from './bodies.ts';
import { checkedFrom, helpfulTape } from './helpfulTape.ts';
import type { Network } from './networks.ts';
import type { Sighting, Spot } from './sighting.ts';
import { snooped, standardisedOf } from './snooped.ts';
import { redundancyOf, strengthOf, type Strength } from './strength.ts';
import { unsurveyed, type Reading, type Suspect, type Survey } from './survey.ts';
import { networkKey, networksOf, sightingsOf } from './surveyed.ts';

/** Of more marks nobody waits for what holds them. Ours, no published source. */
export const mostMarks = 200;

type Readings = readonly (readonly [ObservationId, Reading])[];

/** What one network says of its readings, where its marks stand already. */
interface Judged {
  readonly readings: Readings;
  readonly suspects: readonly Suspect[];
}

const readingOf = (strength: Strength, { id, sigma, seen }: Sighting): Reading => {
  const rows = strength.rows.filter((row) => row.sighting.id === id);
  const off = Math.hypot(...rows.map((row) => row.off)) * sigma;
  const redundancy = Math.min(...rows.map((row) => redundancyOf(row, strength)));
  const [only] = rows;
  if (seen.kind === 'fix' || only === undefined)
    return { residual: off, redundancy, standardised: null };
  return { residual: only.off * sigma, redundancy, standardised: standardisedOf(only, strength) };
};

const placesOf = ({ spots }: Network): ReadonlyMap<MarkId, SitePoint> =>
  new Map([...spots].map(([id, { x, y }]) => [id, { x, y }]));

const judge = (network: Network): Judged => {
  const strength = strengthOf(network, placesOf(network));
  return {
    readings: network.sightings.map((one) => [one.id, readingOf(strength, one)] as const),
    suspects: snooped(network),
  };
};

/** The marks that have to be held: those of fence, and those that anything firm was observed of. */
const concerned = (site: Site): MarkId[] => {
  const fence = Object.values<FenceLine>(site.lines).flatMap(({ path }) =>
    Object.values(path).map(({ mark }) => mark),
  );
  return [...new Set([...fence, ...tapedIn(site)])].toSorted();
};

const tapedIn = (site: Site): MarkId[] => {
  const firm = Object.values(site.observations).filter(({ kind }) => kind !== 'fix');
  return [...new Set(firm.flatMap((seen) => Object.values(marksObserved(seen))))].toSorted();
};

type Held = Pick<Survey, 'loose' | 'helps' | 'body'>;

/** What holds in a site as a whole: the marks outside of its largest body, and the tape that would help. */
const heldIn = (site: Site, marks: readonly MarkId[]): Held => {
  const spots = new Map(
    marks.flatMap((id): [MarkId, Spot][] => {
      const mark: Mark | undefined = site.marks[id];
      return mark === undefined ? [] : [[id, mark]];
    }),
  );
  const network = { spots, sightings: sightingsOf(site).filter(({ seen }) => isOf(seen, spots)) };
  const places = placesOf(network);
  const [body] = bodiesOf(network, places);
  const loose = marks.filter((id) => body?.marks.has(id) !== true);
  const helps = helpfulTape(network, places, { trusts: site.trusts, loose: loose.length });
  return { loose, helps, body: body !== undefined && body.marks.size > 2 ? body : null };
};

const isOf = (seen: Sighting['seen'], spots: ReadonlyMap<MarkId, Spot>): boolean =>
  Object.values(marksObserved(seen)).every((id) => spots.has(id));

const standsBy = (
  { loose, suspects }: Pick<Survey, 'loose' | 'suspects'>,
  readings: Readings,
): Survey['stands'] => {
  if (suspects.length > 0) return 'disagrees';
  if (loose.length > 0) return 'loose';
  return readings.some(([, { redundancy }]) => redundancy < checkedFrom) ? 'unchecked' : 'held';
};

/**
 * What the observations of a site say of themselves and of its marks, where these stand by them
 * already. What no edit touched is taken over from the layout before. Never throws.
 */
export const surveyOf = (site: Site, carry: Carry): Survey => {
  const taped = tapedIn(site);
  const judged = networksOf(site).map((network) => {
    const { id, from } = networkKey(network);
    return carry.shelf<Judged>('judged').take(id, from, () => judge(network));
  });
  const readings = judged.flatMap((one) => one.readings);
  const suspects = judged
    .flatMap((one) => one.suspects)
    .toSorted((a, b) => sizeOf(b, readings) - sizeOf(a, readings));
  if (taped.length === 0) return { ...unsurveyed, readings: Object.fromEntries(readings) };
  const marks = concerned(site);
  const from = [
    ...marks.flatMap((id) => [id, site.marks[id]]),
    site.trusts,
    ...Object.values(site.observations),
  ];
  const large = marks.length > mostMarks;
  const whole = (): Held =>
    large ? { loose: marks, helps: null, body: null } : heldIn(site, marks);
  const held = carry.shelf<Held>('held').take('site', from, whole);
  const spare = Math.round(readings.reduce((sum, [, { redundancy }]) => sum + redundancy, 0));
  return {
    readings: Object.fromEntries(readings),
    taped,
    ...held,
    suspects,
    spare,
    stands: large && suspects.length === 0 ? 'large' : standsBy({ ...held, suspects }, readings),
  };
};

const sizeOf = ({ ids: [id] }: Suspect, readings: Readings): number =>
  Math.abs(readings.find(([one]) => one === id)?.[1].standardised ?? 0);
