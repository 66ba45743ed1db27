import type { Site } from '../../site/site.ts';
import type { Met } from '../sweep/obstacle.ts';
import { gateName, lineName, oneLine } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';
import { featureWords } from '../../site/featureWords.ts';

const plain: Readonly<Record<Exclude<Met['kind'], 'gate' | 'fence'>, string>> = {
  building: phrase`a building`,
  boundary: phrase`the boundary`,
  pool: phrase`the pool`,
  paving: phrase`the paving`,
  tree: phrase`a tree`,
};

/** What a flag calls a thing that a leaf meets: its label, else what it is. */
export const metName = (site: Site, met: Met): string => {
  if (met.kind === 'gate') return phrase`the leaves of ${gateName(site, met.id)}`;
  if (met.kind === 'fence') return phrase`the fence of ${lineName(site, met.id)}`;
  const label = oneLine(site.features[met.id]?.label);
  return label === '' ? plain[met.kind] : phrase`${label} (${featureWords[met.kind]})`;
};
