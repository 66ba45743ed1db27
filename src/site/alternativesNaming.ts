import type { Alternative } from './alternative.ts';
import { alternativesOf } from './alternativesOf.ts';
import type { SpecId } from './ids.ts';
import type { Site } from './site.ts';

/** The alternatives of a site that name a build, as one to replace or one to put in its place; in their order. */
export const alternativesNaming = (
  site: Pick<Site, 'alternatives'>,
  id: SpecId,
): readonly Alternative[] =>
  alternativesOf(site).filter(
    ({ instead }) => Object.hasOwn(instead, id) || Object.values(instead).includes(id),
  );
