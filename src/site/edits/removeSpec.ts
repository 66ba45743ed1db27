import { alternativesNaming } from '../alternativesNaming.ts';
import { entry } from '../entry.ts';
import type { SpecId } from '../ids.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Removes a fence spec that no line is built to and no alternative names. RangeError for an unknown one and
 * for one in use.
 */
export const removeSpec = (site: Site, id: SpecId): Site => {
  entry(site, 'specs', id);
  if (Object.values(site.lines).some(({ spec }) => spec === id)) {
    throw new RangeError(phrase`specs: expected one that no line is built to, found ${quoted(id)}`);
  }
  const [named] = alternativesNaming(site, id);
  if (named !== undefined) {
    const { label } = named;
    throw new RangeError(
      phrase`specs: expected one that no alternative names, ${quoted(label)} names ${quoted(id)}`,
    );
  }
  return withoutEntries(site, 'specs', [id]);
};
