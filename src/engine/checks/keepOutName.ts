import type { Site } from '../../site/site.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { oneLine } from './names.ts';

const plain: Readonly<Record<KeepOut['kind'], string>> = {
  utility: 'a buried service',
  roots: 'the roots of a tree',
  'keep-out': 'ground to keep out of',
  joint: 'the edge of paving',
};

const within: Readonly<Record<KeepOut['kind'], (name: string) => string>> = {
  utility: (name) => `the tolerance zone of ${name}`,
  roots: (name) => `the roots of ${name}`,
  'keep-out': (name) => name,
  joint: (name) => `the edge of ${name}`,
};

/** What a flag calls a keep-out: by its label and why it is one, else what it is. */
export const keepOutName = (site: Site, { id, kind }: Pick<KeepOut, 'id' | 'kind'>): string => {
  const label = oneLine(site.features[id]?.label);
  return label === '' ? plain[kind] : within[kind](label);
};
