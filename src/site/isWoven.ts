import type { FenceSpec } from './fenceSpec.ts';

/** Whether a build has fabric between its posts: rails, braces, bars and pull posts are for that alone. */
export const isWoven = ({ infill }: Pick<FenceSpec, 'infill'>): boolean =>
  infill.kind === 'chain link';
