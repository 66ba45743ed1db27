import { drawFeature } from '../../drawing/plan/drawFeature.ts';
import { drawWallTops } from '../../drawing/plan/drawWallTops.ts';
import { heightLimitText } from '../../drawing/plan/heightLimitText.ts';
import { pathPoints } from '../../drawing/plan/pathPoints.ts';
import type { Layout } from '../../engine/layout.ts';
import { centroid } from '../../geometry/centroid.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { Mark } from '../../site/mark.ts';
import { isClosed, type PathFeature } from '../../site/pathFeature.ts';
import type { Shot } from '../../site/shot.ts';
import type { Site } from '../../site/site.ts';
import { drawnThings } from './drawnThings.ts';
import type { DxfLayer } from './dxfLayers.ts';
import type { DxfThing } from './dxfThing.ts';

type Service = Extract<Feature, { kind: 'utility' }>['service'];

const utilities: Readonly<Record<Service, DxfLayer>> = {
  electric: 'UTILITY-ELECTRIC',
  gas: 'UTILITY-GAS',
  communication: 'UTILITY-COMMUNICATION',
  water: 'UTILITY-WATER',
  reclaimed: 'UTILITY-RECLAIMED',
  sewer: 'UTILITY-SEWER',
};

const zones = { 'sight triangle': 'SIGHT-TRIANGLE', 'front yard': 'FRONT-YARD' } as const;

const layers: Readonly<Record<Exclude<PathFeature['kind'], 'utility' | 'height zone'>, DxfLayer>> =
  {
    boundary: 'BOUNDARY',
    building: 'BUILDING',
    paving: 'PAVING',
    pool: 'POOL',
    'keep-out': 'KEEP-OUT',
  };

const named = (layer: DxfLayer, at: SitePoint | undefined | null, text: string): DxfThing[] =>
  at === undefined || at === null || text.trim() === '' ? [] : [{ kind: 'text', layer, at, text }];

const labelOf = (feature: PathFeature, { lengths }: Site): string =>
  feature.kind === 'height zone'
    ? `${feature.label.trim() || feature.of}, ${heightLimitText(feature, lengths)}`
    : feature.label;

const layerOf = (feature: PathFeature): DxfLayer => {
  if (feature.kind === 'utility') return utilities[feature.service];
  return feature.kind === 'height zone' ? zones[feature.of] : layers[feature.kind];
};

const pathThings = (feature: PathFeature, site: Site): DxfThing[] => {
  const points = pathPoints(site, feature.path);
  const layer = layerOf(feature);
  const at = isClosed(feature) ? centroid(points) : points[0];
  return [
    ...drawnThings(drawFeature(feature, site), layer),
    ...named(layer, at, labelOf(feature, site)),
  ];
};

const featureThings = (feature: Feature, site: Site): DxfThing[] => {
  if ('path' in feature) return pathThings(feature, site);
  const at = site.marks[feature.mark];
  if (at === undefined) return [];
  if (feature.kind === 'note') return named('NOTES', at, feature.text || feature.label);
  return [
    ...drawnThings(drawFeature(feature, site), 'TREES'),
    ...named('TREES', at, feature.label),
  ];
};

/** What is on the ground beside the fence: features and walls under fence as the plan draws them, named marks, grade shots with their heights. */
export const groundThings = (site: Site, layout: Layout): DxfThing[] => [
  ...Object.values<Feature>(site.features).flatMap((feature) => featureThings(feature, site)),
  ...drawnThings(drawWallTops(site, layout), 'WALLS'),
  ...Object.values<Mark>(site.marks)
    .filter(({ label }) => label.trim() !== '')
    .flatMap((mark): DxfThing[] => [
      { kind: 'point', layer: 'MARKS', at: mark, z: 0 },
      ...named('MARKS', mark, mark.label),
    ]),
  ...Object.values<Shot>(site.shots).flatMap((shot): DxfThing[] => [
    { kind: 'point', layer: 'GRADE-SHOTS', at: shot, z: shot.z },
    ...named('GRADE-SHOTS', shot, shot.label),
  ]),
];
