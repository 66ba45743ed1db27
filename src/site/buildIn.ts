import type { Alternative } from './alternative.ts';
import type { SpecId } from './ids.ts';

/** The build that an alternative has in place of one of the plan: that one itself where it names none. */
export const buildIn = ({ instead }: Pick<Alternative, 'instead'>, plan: SpecId): SpecId =>
  (Object.hasOwn(instead, plan) ? instead[plan] : undefined) ?? plan;
