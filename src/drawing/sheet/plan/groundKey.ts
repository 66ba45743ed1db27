import type { Site } from '../../../site/site.ts';
import { groundSign, lineSign, type KeyEntry } from './keySigns.ts';
import { phrase } from '../../../phrases/phrase.ts';

const features = {
  building: { sign: groundSign('building', 0.07, 'building'), text: phrase`building` },
  paving: { sign: groundSign('paving', 0.13, 'paving'), text: phrase`paving` },
  pool: { sign: groundSign('water', 0.16, 'pool'), text: phrase`pool` },
  'keep-out': {
    sign: groundSign('keep-out', 0.05, 'keep-out'),
    text: phrase`keep out: no holes`,
  },
  boundary: { sign: lineSign('boundary'), text: phrase`boundary` },
} as const satisfies Record<string, KeyEntry>;

/** The grounds and boundaries that a site has, each sort once. */
export const groundKey = ({ features: own }: Pick<Site, 'features'>): KeyEntry[] => {
  const kinds = new Set(Object.values(own).map(({ kind }) => kind));
  return Object.entries(features).flatMap(([kind, entry]) =>
    kinds.has(kind as keyof typeof features) ? [entry] : [],
  );
};
