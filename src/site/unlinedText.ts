import { newLineage } from './lineage.ts';
import { saveSite } from './saveSite.ts';
import type { Site } from './site.ts';

/** The text of a document that its digest is of: all of it but where it comes from. */
export const unlinedText = (site: Site): string => saveSite({ ...site, lineage: newLineage });
