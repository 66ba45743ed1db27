import { inches } from '../../src/units/inches.ts';
import type { Feature } from '../../src/site/feature.ts';
import type { FenceLine } from '../../src/site/fenceLine.ts';
import type { MarkId, VertexId } from '../../src/site/ids.ts';
import type { Mark } from '../../src/site/mark.ts';
import type { Site } from '../../src/site/site.ts';
import { namedSite } from '../store/namedSite.ts';
import { samplePlans } from '../store/samplePlans.ts';

const marks: Record<MarkId, Mark> = {};

const path = (name: string, corners: readonly (readonly [number, number] | MarkId)[]) =>
  Object.fromEntries(
    corners.map((corner, n) => {
      const mark: MarkId = typeof corner === 'string' ? corner : `mark:${name}${n + 1}`;
      if (typeof corner !== 'string')
        marks[mark] = { x: corner[0], y: corner[1], label: '', fixed: false };
      return [`vertex:${name}${n + 1}`, { mark, order: `a${n}` }];
    }),
  ) as Record<VertexId, { mark: MarkId; order: string }>;

const house: Feature = {
  kind: 'building',
  label: 'House',
  path: path('house', [
    [0, 0],
    [360, 0],
    [360, 240],
    [0, 240],
  ]),
};

const lot: Feature = {
  kind: 'boundary',
  label: 'Lot',
  closed: false,
  setback: inches(0),
  path: path('lot', [
    [-600, -900],
    [900, -900],
  ]),
};

const fence: FenceLine = {
  label: 'Back fence',
  spec: 'spec:invented',
  closed: false,
  hook: 'start',
  stepped: {},
  curved: {},
  walls: {},
  follows: null,
  guards: null,
  path: path('fence', ['mark:house2', [840, 0], [840, -480]]),
};

marks['mark:tree1'] = { x: 600, y: 600, label: '', fixed: false };
const tree: Feature = {
  kind: 'tree',
  label: 'Oak',
  mark: 'mark:tree1',
  trunk: samplePlans.tree.trunk,
  roots: samplePlans.tree.roots,
};

/**
 * A yard for the tests, in inches: a house of 30 ft by 20 ft from the origin east and north; a
 * fence from its south-east corner 40 ft east, then 40 ft south; a lot line far in the south; a
 * tree in the north.
 */
export const yard: Site = {
  ...namedSite('Yard'),
  marks,
  lines: { 'line:fence': fence },
  features: { 'feature:house': house, 'feature:lot': lot, 'feature:tree': tree },
  specs: { [samplePlans.fence.id]: samplePlans.fence.spec },
};
