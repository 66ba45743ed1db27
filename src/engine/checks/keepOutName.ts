import type { Site } from '../../site/site.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { oneLine } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

const plain: Readonly<Record<KeepOut['kind'], string>> = {
  utility: phrase`a buried service`,
  roots: phrase`the roots of a tree`,
  'keep-out': phrase`ground to keep out of`,
  joint: phrase`the edge of paving`,
};

const within: Readonly<Record<KeepOut['kind'], (name: string) => string>> = {
  utility: (name) => phrase`the tolerance zone of ${name}`,
  roots: (name) => phrase`the roots of ${name}`,
  'keep-out': (name) => name,
  joint: (name) => phrase`the edge of ${name}`,
};

/** What a flag calls a keep-out: by its label and why it is one, else what it is. */
export const keepOutName = (site: Site, { id, kind }: Pick<KeepOut, 'id' | 'kind'>): string => {
  const label = oneLine(site.features[id]?.label);
  return label === '' ? plain[kind] : within[kind](label);
};
