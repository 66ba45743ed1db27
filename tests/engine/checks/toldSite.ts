import fc from 'fast-check';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import type { FenceLine } from '../../../src/site/fenceLine.ts';
import type { Gate } from '../../../src/site/gate.ts';
import type { Feature } from '../../../src/site/feature.ts';
import { soilNames, exposureNames } from '../../../src/site/conditions.ts';
import { townMeasures } from '../../../src/site/townRule.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { roundPost } from '../../../src/site/roundPost.ts';
import { randomSite } from '../randomSite.ts';

const length = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true }).map(inches);
const maybe = <T>(some: fc.Arbitrary<T>) => fc.option(some, { nil: null });
const speed = fc.integer({ min: 20, max: 300 });
const pipe = fc
  .tuple(length(0.01, 12), length(0.001, 14))
  .map(([od, wall]) => ({ label: 'any', od, wall }));

const conditions = fc.record({
  soil: maybe(fc.constantFrom(...soilNames)),
  isolated: fc.boolean(),
  frost: maybe(length(0, 200)),
  wind: maybe(fc.record({ speed, exposure: fc.constantFrom(...exposureNames) })),
  ice: maybe(fc.record({ thickness: fc.double({ min: 0, max: 6, noNaN: true }), speed })),
  bays: fc.constantFrom('by build' as const, 'by wind' as const),
});

const build = fc.record({
  fabricHeight: length(1, 400),
  linePost: pipe.map(roundPost),
  terminalPost: pipe.map(roundPost),
  gatePost: pipe.map(roundPost),
  topRail: maybe(pipe),
  middleRail: maybe(pipe),
  bottomRail: maybe(pipe),
  barbedWire: maybe(
    fc.record({
      strands: fc.integer({ min: 1, max: 12 }),
      arms: fc.constantFrom('upright' as const, 'both ways' as const),
    }),
  ),
  grade: maybe(fc.constantFrom('regular' as const, 'high strength' as const)),
  mesh: maybe(length(0.01, 6)),
  wire: maybe(length(0.01, 1)),
  solid: maybe(fc.double({ min: 0, max: 1, noNaN: true })),
  leastDepth: length(0, 100),
  gapUnder: length(0, 12),
}) satisfies fc.Arbitrary<Partial<FenceSpec>>;

const passing = fc.record({
  latchHeight: maybe(length(0, 80)),
  threshold: maybe(length(0, 4)),
  route: fc.constantFrom(null, 'accessible' as const, 'fire' as const),
  powered: fc.boolean(),
}) satisfies fc.Arbitrary<Partial<Gate>>;

const rule = fc.record({
  town: fc.constant('Invented'),
  measure: maybe(fc.constantFrom(...townMeasures)),
  limit: maybe(length(0, 300)),
  words: fc.constantFrom('', 'ask'),
  source: fc.constantFrom('', 'invented'),
});

const all = <T extends object>(map: Readonly<Record<string, T>>, fields: Partial<T>) =>
  Object.fromEntries(Object.entries<T>(map).map(([id, one]) => [id, { ...one, ...fields }]));

/** Services that hang, ground that limits heights, and the boundary: some of the features made so. */
const otherwise = (features: Site['features']): Site['features'] =>
  Object.fromEntries(
    Object.entries<Feature>(features).map(([id, feature], n) => {
      if (feature.kind === 'utility') {
        const run = n % 2 === 0 ? ('overhead' as const) : ('buried' as const);
        return [id, { ...feature, run, service: 'electric' as const }];
      }
      if (feature.kind !== 'building' || n % 2 === 0) return [id, feature];
      const { label, path } = feature;
      const limits = { solid: inches(30), open: inches(42) };
      return [id, { kind: 'height zone', of: 'sight triangle', label, path, ...limits }];
    }),
  );

/** A random site of which much has been told: wind, ice, ground, pipes, routes, town rules, barriers. */
export const toldSite: fc.Arbitrary<Site> = fc
  .tuple(randomSite, conditions, build, passing, fc.array(rule, { maxLength: 3 }), fc.boolean())
  .map(([site, told, fields, pass, rules, pool]) => ({
    ...site,
    conditions: told,
    specs: all(site.specs, fields as Partial<FenceSpec>),
    gates: all(site.gates, pass as Partial<Gate>),
    lines: all(site.lines, { guards: pool ? 'pool' : null } as Partial<FenceLine>),
    features: otherwise(site.features),
    townRules: Object.fromEntries(rules.map((one, n) => [`town-rule:${n}`, one])),
  }));
