import type { Layout } from '../../engine/layout.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import { featureRows, markRows, pictureRows, readingRows, shotRows } from './groundRows.ts';
import { lineRows } from './lineRows.ts';
import type { ListGroup } from './listRow.ts';
import { flagRows, postRows } from './postRows.ts';

const apart: readonly Feature['kind'][] = ['utility', 'note'];

/**
 * All that is in a yard, in words and in groups; groups with nothing in them are left out. Every thing
 * that a hand can select on the pad has a row.
 */
export const yardList = (site: Site, layout: Layout): readonly ListGroup[] => {
  const groups: readonly ListGroup[] = [
    { key: 'lines', title: 'Fence lines', rows: lineRows(site, layout) },
    { key: 'flags', title: 'Flags', rows: flagRows(layout) },
    {
      key: 'features',
      title: 'On the ground',
      rows: featureRows(site, (kind) => !apart.includes(kind)),
    },
    { key: 'utilities', title: 'Utilities', rows: featureRows(site, (kind) => kind === 'utility') },
    { key: 'notes', title: 'Notes', rows: featureRows(site, (kind) => kind === 'note') },
    { key: 'marks', title: 'Marks', rows: markRows(site, layout) },
    { key: 'readings', title: 'Readings', rows: readingRows(site, layout) },
    { key: 'shots', title: 'Grade shots', rows: shotRows(site) },
    { key: 'pictures', title: 'Pictures', rows: pictureRows(site) },
    { key: 'posts', title: 'Posts', rows: postRows(site, layout) },
  ];
  return groups.filter(({ rows }) => rows.length > 0);
};
