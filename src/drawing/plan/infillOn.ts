import type { Infill } from '../../site/infill.ts';
import type { LineId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';

/** What a fence line has between its posts: chain link where its build is not known. */
export const infillOn = (
  { lines, specs }: Pick<Site, 'lines' | 'specs'>,
  id: LineId,
): Infill['kind'] => specs[lines[id]?.spec ?? 'spec:']?.infill.kind ?? 'chain link';
