import type { Levels } from '../levels.ts';
import type { Site } from '../site.ts';
import { withLevels } from '../withLevels.ts';

/** Says how far level notes may close off, inches; null where nobody says. RangeError for less than 0. */
export const setLevelAllowable = (site: Site, allowable: Levels['allowable']): Site =>
  withLevels(site, { ...site.levels, allowable });
