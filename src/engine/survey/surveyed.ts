import type { Site } from '../../site/site.ts';

export interface Surveyed {
  readonly drawn: Site;
  readonly site: Site;
}

export const surveyed = (drawn: Site, before: Surveyed | null): Surveyed =>
  before?.drawn === drawn ? before : { drawn, site: drawn };
