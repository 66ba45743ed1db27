import type { Site } from '../../../site/site.ts';
import {
  utilityColourCode,
  utilityColours,
  type UtilityColour,
} from '../../../trade/utilityColours.ts';
import { lineSign, type KeyEntry } from './keySigns.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** The utilities that a plan shows, buried or overhead, in the colours of the code. */
const colours: Readonly<Record<UtilityColour['colour'], string>> = {
  red: phrase`red`,
  yellow: phrase`yellow`,
  orange: phrase`orange`,
  blue: phrase`blue`,
  purple: phrase`purple`,
  green: phrase`green`,
  pink: phrase`pink`,
  white: phrase`white`,
};

const servicesRun = (site: Pick<Site, 'features'>, run: 'buried' | 'overhead'): KeyEntry[] => {
  const shown = Object.values(site.features).flatMap((feature) =>
    feature.kind === 'utility' && feature.run === run ? [feature.service] : [],
  );
  return [...new Set(shown)].toSorted().map((service) => ({
    sign: lineSign(service),
    text: `${utilityColours[service].means} (${colours[utilityColours[service].colour]})${run === 'overhead' ? phrase`, overhead` : ''}`,
  }));
};

/** The utilities that a plan shows, each service once, and the code that their colours are of. */
export const utilityKey = (site: Pick<Site, 'features'>): KeyEntry[] => {
  const entries = [...servicesRun(site, 'buried'), ...servicesRun(site, 'overhead')];
  if (entries.length === 0) return [];
  return [...entries, { sign: [], text: utilityColourCode.text }];
};
