import type { Layout } from '../../engine/layout.ts';
import { figureOf } from '../../engine/survey/figureOf.ts';
import { observationName } from '../../engine/survey/observationName.ts';
import { readingText } from '../../engine/survey/readingText.ts';
import type { ObservationId } from '../../site/ids.ts';
import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`What was measured`, align: 'left', share: 1 },
  { heading: phrase`Reads`, align: 'right', share: 0 },
  { heading: phrase`By the others`, align: 'left', share: 0.6 },
];

/**
 * Everything that was observed of a site in the order of its entry: what it reads, empty where it is told
 * without a figure, and how it agrees with the others, empty where the marks were too many to say.
 */
export const measuredTable = (
  site: Site,
  { posts, survey }: Pick<Layout, 'posts' | 'survey'>,
): Table => ({
  title: phrase`Measured`,
  columns,
  rows: (Object.entries(site.observations) as [ObservationId, Observation][]).map(([id, seen]) => {
    const reading = survey.readings[id];
    const name = observationName(site, posts, seen);
    return [
      `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`,
      figureOf(seen, site.lengths),
      reading === undefined ? '' : readingText(seen, reading, site.lengths),
    ];
  }),
});
