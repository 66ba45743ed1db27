import type { Alternative } from './alternative.ts';
import { buildIn } from './buildIn.ts';
import type { FenceLine } from './fenceLine.ts';
import type { LineId } from './ids.ts';
import { kept } from './kept.ts';
import type { Site } from './site.ts';

/**
 * A site as one of its alternatives has it: each fence line built to what takes the place of its build, all
 * at once, so that two builds can change places. All else stays as it is, posts that a gate has for itself
 * too. The same site where no line changes.
 */
export const builtAs = (site: Site, alternative: Pick<Alternative, 'instead'>): Site => {
  const lines = Object.fromEntries(
    (Object.entries(site.lines) as [LineId, FenceLine][]).map(([id, line]) => [
      id,
      { ...line, spec: buildIn(alternative, line.spec) },
    ]),
  );
  const shared = kept(site.lines, lines) as Site['lines'];
  return shared === site.lines ? site : { ...site, lines: shared };
};
