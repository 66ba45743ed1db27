import { usualBoards } from '../../engine/usualBoards.ts';
import { usualPanels } from '../../engine/usualPanels.ts';
import { usualSpec } from '../../engine/usualSpec.ts';
import type { SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { FencePlan } from '../../store/plans.ts';
import { inches } from '../../units/inches.ts';

/** Builds by the tables, each kind at the heights at which it is usual, in feet. */
const tables = [
  ...[4, 5, 6, 8, 10, 12].map((feet) => usualSpec(inches(feet * 12))),
  ...[4, 6, 8].map((feet) => usualBoards(inches(feet * 12))),
  ...[4, 5, 6].map((feet) => usualPanels(inches(feet * 12))),
];

/** The builds that a fence line can have: those that the site carries, then those of the tables that it lacks. */
export const offeredFences = ({ specs }: Pick<Site, 'specs'>): FencePlan[] => {
  const carried = Object.entries(specs).map(([id, spec]): FencePlan => ({
    id: id as SpecId,
    spec,
  }));
  return [...carried, ...tables.filter(({ id }) => !Object.hasOwn(specs, id))];
};
