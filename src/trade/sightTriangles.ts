import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** A leg of a sight triangle, along each of the two ways that meet, inches. */
export interface SightLegs {
  /** What meets there; `either` where the figure was read without saying. */
  readonly at: 'streets' | 'drive' | 'alley' | 'either';
  readonly length: Inches;
}

/** What one town asks of the ground at a corner that drivers have to see round. Heights over the ground. */
export interface SightTriangle {
  readonly town: string;
  readonly legs: readonly SightLegs[];
  /** The highest that what one cannot see through may stand, inches. */
  readonly solid: Inches;
  /** The same of fence that one can see through, inches; the same figure where the town makes no difference. */
  readonly open: Inches;
  /** Clear from that limit up to this, so that what hangs lower than it is looked at too; null where it is not said. */
  readonly clearTo: Inches | null;
  readonly source: Source;
}

const legs = (at: SightLegs['at'], feet: number): SightLegs => ({ at, length: inches(feet * 12) });

interface Limits {
  readonly solid: number;
  readonly open?: number;
  readonly clearTo?: number;
}

const town = (
  name: string,
  own: readonly SightLegs[],
  { solid, open = solid, clearTo }: Limits,
  text: string,
): SightTriangle => ({
  town: name,
  legs: own,
  solid: inches(solid),
  open: inches(open),
  clearTo: clearTo === undefined ? null : inches(clearTo),
  source: { text: `${name}: ${text}`, status: 'published' },
});

/** What some towns publish, from strict to mild by what they let stand: they differ, and the town of the site decides. */
export const sightTriangles: readonly SightTriangle[] = [
  town(
    'Dubuque IA',
    [legs('either', 10)],
    { solid: 24, clearTo: 96 },
    phrase`municipal code, 10 ft, clear from 2 ft to 8 ft`,
  ),
  town(
    'San Marcos TX',
    [legs('streets', 25), legs('alley', 10)],
    { solid: 30 },
    phrase`city fence rules, 25 ft at streets, 10 ft at an alley, 30 in`,
  ),
  town('El Segundo CA', [legs('either', 10)], { solid: 30 }, phrase`municipal code, 10 ft, 30 in`),
  town(
    'Zanesville OH',
    [legs('streets', 30), legs('drive', 10)],
    { solid: 30, open: 42 },
    phrase`municipal code, 30 ft at streets, 10 ft at a drive, solid 2.5 ft, open fence 3.5 ft`,
  ),
  town('Norfolk NE', [legs('either', 25)], { solid: 36 }, phrase`city rules, 25 ft, 3 ft`),
  town(
    'Woodridge IL',
    [legs('either', 25), legs('either', 10)],
    { solid: 36, clearTo: 96 },
    phrase`municipal code, 25 ft and 10 ft, clear from 3 ft to 8 ft`,
  ),
];

const unknown = phrase`a default until somebody says what the local code has`;

/** Legs of a new sight triangle, inches: where streets meet and where a drive meets one. */
export const usualSightLegs = {
  streets: legs('streets', 25).length,
  drive: legs('drive', 10).length,
  source: {
    text: phrase`San Marcos TX: 25 ft at streets, as Woodridge IL and Norfolk NE have; Zanesville OH: 10 ft at a drive; ${unknown}`,
    status: 'published',
  } satisfies Source,
};

/** How high anything may stand in a new sight triangle, inches, open or not: the strictest that several towns have. */
export const usualSightLimit = {
  solid: inches(30),
  open: inches(30),
  source: {
    text: phrase`San Marcos TX and El Segundo CA: 30 in; ${unknown}`,
    status: 'published',
  } satisfies Source,
};
