import fc from 'fast-check';
import { usualBoards } from '../../src/engine/usualBoards.ts';
import { usualPanels } from '../../src/engine/usualPanels.ts';
import type { FenceSpec } from '../../src/site/fenceSpec.ts';
import type { LineId, SpecId } from '../../src/site/ids.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { randomSite } from './randomSite.ts';

const sixteenths = (low: number, high: number) =>
  fc.integer({ min: 16 * low, max: 16 * high }).map((n) => inches(n / 16));

const boards: fc.Arbitrary<FenceSpec> = fc
  .record({
    width: sixteenths(2, 12),
    gap: sixteenths(0, 6),
    rails: fc.integer({ min: 1, max: 4 }),
  })
  .map((fields) => ({
    ...usualBoards(inches(72)).spec,
    infill: { kind: 'boards', board: 'pine', rail: '2 × 4', ...fields },
  }));

const panels: fc.Arbitrary<FenceSpec> = fc
  .record({
    width: sixteenths(30, 110),
    last: fc.constantFrom('cut' as const, 'all equal' as const),
  })
  .map((fields) => ({
    ...usualPanels(inches(60)).spec,
    infill: { kind: 'panels', panel: 'steel', ...fields },
  }));

/** A random site whose lines are chain link, boards or panels, as it comes. */
export const mixedSite: fc.Arbitrary<Site> = fc
  .record({
    site: randomSite,
    boards,
    panels,
    builds: fc.array(fc.constantFrom<SpecId>('spec:six', 'spec:boards', 'spec:panels'), {
      minLength: 3,
      maxLength: 3,
    }),
    hooks: fc.array(fc.constantFrom('start' as const, 'end' as const), {
      minLength: 3,
      maxLength: 3,
    }),
  })
  .map(({ site, builds, hooks, ...specs }) => {
    const ids = Object.keys(site.lines) as LineId[];
    const lines = ids.map((id, n) => {
      const [spec = 'spec:six', hook = 'start'] = [builds[n], hooks[n]];
      return [id, { ...site.lines[id]!, spec, hook }] as const;
    });
    return {
      ...site,
      specs: { ...site.specs, 'spec:boards': specs.boards, 'spec:panels': specs.panels },
      lines: Object.fromEntries(lines),
    };
  });
