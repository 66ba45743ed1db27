import { bracingTexts } from '../drawing/tables/bracingTexts.ts';
import { gateTitle } from '../drawing/tables/gateKind.ts';
import { leafLoadTexts } from '../drawing/tables/leafLoadTexts.ts';
import { structureTable } from '../drawing/tables/structureTable.ts';
import type { GateLayout, Layout } from '../engine/layout.ts';
import type { Site } from '../site/site.ts';
import { columns } from './columns.ts';
import { structureCautions } from './structureCautions.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * What posts and leaves of a site were compared with, line by line: posts in wind, frost and ground where
 * somebody has told of any, leaves on their posts, braces; then the cautions.
 */
export const workingLines = (site: Site, layout: Layout): string[] => {
  const { title, columns: heads, rows } = structureTable(site, layout);
  const leaves = Object.values<GateLayout>(layout.gates).flatMap((gate) =>
    leafLoadTexts(site, gate, layout).map((text) => `${gateTitle(gate, site)}: ${text}`),
  );
  return [
    '',
    ...(rows.length === 0
      ? [phrase`nobody has told of wind, ice or frost: posts are compared with tables alone`]
      : [title, ...columns([heads.map(({ heading }) => heading), ...rows])]),
    ...leaves,
    ...bracingTexts(site, layout),
    ...structureCautions,
  ];
};
