import type { Site } from '../../site/site.ts';
import type { Met } from '../sweep/obstacle.ts';
import { gateName, lineName } from './names.ts';

const plain: Readonly<Record<Exclude<Met['kind'], 'gate' | 'fence'>, string>> = {
  building: 'a building',
  boundary: 'the boundary',
  pool: 'the pool',
  paving: 'the paving',
  tree: 'a tree',
};

/** What a flag calls a thing that a leaf meets: its label, else what it is. */
export const metName = (site: Site, met: Met): string => {
  if (met.kind === 'gate') return `the leaves of ${gateName(site, met.id)}`;
  if (met.kind === 'fence') return `the fence of ${lineName(site, met.id)}`;
  const label = (site.features[met.id]?.label ?? '').replace(/\s+/g, ' ').trim();
  return label === '' ? plain[met.kind] : `${label} (${met.kind})`;
};
