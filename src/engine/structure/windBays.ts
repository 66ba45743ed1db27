import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import { shortestBay } from './shortestBay.ts';
import { bayInWind } from './windOnPost.ts';

const shortened = (spec: FenceSpec, conditions: Site['conditions']): FenceSpec => {
  const longest = bayInWind(spec, conditions);
  if (longest === null || longest >= spec.maxBay) return spec;
  return { ...spec, maxBay: inches(Math.max(shortestBay, longest)) };
};

/**
 * The site with the bays of its builds no longer than their line posts bear the wind of the place, where a
 * person has turned that on; the very same site else, and where no build changes.
 */
export const windBays = (site: Site, carry: Carry): Site => {
  const { conditions, specs } = site;
  if (conditions.bays === 'by build' || (conditions.wind === null && conditions.ice === null))
    return site;
  const known = carry.shelf<FenceSpec>('bays by wind');
  const built = (Object.entries(specs) as [SpecId, FenceSpec][]).map(
    ([id, spec]) =>
      [id, known.take(id, [spec, conditions], () => shortened(spec, conditions))] as const,
  );
  return built.every(([id, spec]) => spec === specs[id])
    ? site
    : { ...site, specs: Object.fromEntries(built) };
};
