import type { Feature } from './feature.ts';
import type { FoundShape } from './found.ts';

type HeightZone = Extract<Feature, { kind: 'height zone' }>;
type Service = Extract<Feature, { kind: 'utility' }>['service'];

/** What things of a file can become on a site. */
export type Becomes =
  | 'leave out'
  | 'boundary'
  | 'building'
  | 'paving'
  | 'pool'
  | 'keep-out'
  | HeightZone['of']
  | 'fence line'
  | `utility, ${Service}`
  | 'mark'
  | 'note'
  | 'grade shot';

const utilities: readonly Becomes[] = [
  'utility, electric',
  'utility, gas',
  'utility, communication',
  'utility, water',
  'utility, reclaimed',
  'utility, sewer',
];

const areas: readonly Becomes[] = [
  'leave out',
  'boundary',
  'building',
  'paving',
  'pool',
  'keep-out',
  'sight triangle',
  'front yard',
  'fence line',
];

/** What things of each shape can become; closed ground as edges all round, open lines as lines. */
export const offers: Readonly<Record<FoundShape, readonly Becomes[]>> = {
  areas,
  holes: areas,
  lines: ['leave out', 'boundary', 'fence line', ...utilities],
  points: ['leave out', 'mark', 'note'],
  heights: ['leave out', 'grade shot'],
  texts: ['leave out', 'note'],
};
