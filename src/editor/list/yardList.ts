import type { Layout } from '../../engine/layout.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import { featureRows, markRows, pictureRows, readingRows, shotRows } from './groundRows.ts';
import { lineRows } from './lineRows.ts';
import type { ListGroup } from './listRow.ts';
import { flagRows, postRows } from './postRows.ts';
import { phrase } from '../../phrases/phrase.ts';

const apart: readonly Feature['kind'][] = ['utility', 'note'];

/**
 * All that is in a yard, in words and in groups; groups with nothing in them are left out. Every thing
 * that a hand can select on the pad has a row.
 */
export const yardList = (site: Site, layout: Layout): readonly ListGroup[] => {
  const groups: readonly ListGroup[] = [
    { key: 'lines', title: phrase`Fence lines`, rows: lineRows(site, layout) },
    { key: 'flags', title: phrase`Flags`, rows: flagRows(layout) },
    {
      key: 'features',
      title: phrase`On the ground`,
      rows: featureRows(site, (kind) => !apart.includes(kind)),
    },
    {
      key: 'utilities',
      title: phrase`Utilities`,
      rows: featureRows(site, (kind) => kind === 'utility'),
    },
    { key: 'notes', title: phrase`Notes`, rows: featureRows(site, (kind) => kind === 'note') },
    { key: 'marks', title: phrase`Marks`, rows: markRows(site, layout) },
    { key: 'readings', title: phrase`Readings`, rows: readingRows(site, layout) },
    { key: 'shots', title: phrase`Grade shots`, rows: shotRows(site) },
    { key: 'pictures', title: phrase`Pictures`, rows: pictureRows(site) },
    { key: 'posts', title: phrase`Posts`, rows: postRows(site, layout) },
  ];
  return groups.filter(({ rows }) => rows.length > 0);
};
