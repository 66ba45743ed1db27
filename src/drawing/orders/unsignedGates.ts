import { standingsOf } from '../../engine/sign/standingsOf.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * The gates whose opening is not signed off, or no more as it was signed, by their names and each
 * with which of the two it is. An order made while there are any says so on every page and line.
 */
export const unsignedGates = (site: Site, layout: Layout): readonly string[] =>
  standingsOf(site, layout).flatMap(({ id, standing }) => {
    if (standing.kind === 'signed') return [];
    const name = site.gates[id]?.label.replace(/\s+/g, ' ').trim() || phrase`Gate`;
    return [
      standing.kind === 'void' ? phrase`${name} (sign-off void)` : phrase`${name} (not signed off)`,
    ];
  });
