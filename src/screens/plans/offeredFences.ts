import { usualSpec } from '../../engine/usualSpec.ts';
import type { SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { FencePlan } from '../../store/plans.ts';
import { inches } from '../../units/inches.ts';

/** Heights of fabric that are offered, in feet. */
const fenceHeights = [4, 5, 6, 8, 10, 12] as const;

/** The builds that a fence line can have: those that the site carries, then those of the tables that it lacks. */
export const offeredFences = ({ specs }: Pick<Site, 'specs'>): FencePlan[] => {
  const carried = Object.entries(specs).map(([id, spec]): FencePlan => ({
    id: id as SpecId,
    spec,
  }));
  const tables = fenceHeights.map((feet) => usualSpec(inches(feet * 12)));
  return [...carried, ...tables.filter(({ id }) => !Object.hasOwn(specs, id))];
};
