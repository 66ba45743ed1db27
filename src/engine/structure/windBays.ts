import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import { bayInWind } from './windOnPost.ts';
import { windsOf } from './windsOf.ts';

/** No bay is taken for shorter than a foot: a post that bears less wants another pipe. Ours. */
const shortest = 12;

const shortened = (spec: FenceSpec, conditions: Site['conditions']): FenceSpec => {
  const longest = bayInWind(spec, conditions);
  if (longest === null || longest >= spec.maxBay) return spec;
  return { ...spec, maxBay: inches(Math.max(shortest, longest)) };
};

/**
 * The site with the bays of its builds no longer than their line posts bear the wind of the place, where a
 * person has turned that on; the very same site else, and where no build changes.
 */
export const windBays = (site: Site, carry: Carry): Site => {
  const { conditions, specs } = site;
  if (conditions.bays === 'by build' || windsOf(conditions).length === 0) return site;
  const known = carry.shelf<FenceSpec>('bays by wind');
  const built = (Object.entries(specs) as [SpecId, FenceSpec][]).map(
    ([id, spec]) =>
      [id, known.take(id, [spec, conditions], () => shortened(spec, conditions))] as const,
  );
  return built.every(([id, spec]) => spec === specs[id])
    ? site
    : { ...site, specs: Object.fromEntries(built) };
};
