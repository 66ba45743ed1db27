import type { PictureId } from '../site/ids.ts';
import { isPlain } from '../site/isPlain.ts';
import type { KeptDocument } from './change.ts';
import type { JobHead } from './jobShelf.ts';

/** What a kept document says of its job, of whatever version it is; empty for what it does not say. */
export const wordsOf = (document: unknown): Pick<JobHead, 'name' | 'customer' | 'place'> => {
  const job = isPlain(document) ? document['job'] : undefined;
  const said = (key: string): string => {
    const value = isPlain(job) ? job[key] : undefined;
    return typeof value === 'string' ? value : '';
  };
  return { name: said('name'), customer: said('customer'), place: said('place') };
};

const idsOf = (map: unknown): PictureId[] =>
  isPlain(map) ? (Object.keys(map) as PictureId[]) : [];

/** The pictures that a kept document has in its file. */
export const picturesIn = ({ pictures }: KeptDocument): PictureId[] => idsOf(pictures);

/** The pictures that a kept document wants: those in its file, and those under it. */
export const picturesUnder = (document: KeptDocument): PictureId[] => {
  const { underlays } = document;
  const under = isPlain(underlays) ? Object.values(underlays) : [];
  const ids = under.map((underlay) => (isPlain(underlay) ? underlay['picture'] : null));
  const known = ids.filter((id): id is PictureId => typeof id === 'string');
  return [...new Set([...picturesIn(document), ...known])];
};
