import type { FenceSpec } from './fenceSpec.ts';
import { isWoven } from './isWoven.ts';
import type { Pipe } from './pipe.ts';

const rails = [
  ['top rail', 'topRail'],
  ['middle rail', 'middleRail'],
  ['bottom rail', 'bottomRail'],
] as const;

/** A rail of pipe that fabric is tied to. */
export interface FenceRail {
  readonly part: (typeof rails)[number][0];
  readonly pipe: Pipe;
}

/** The rails of pipe of a build, from the top; none of one without fabric, whatever it once had. */
export const railsOf = (spec: FenceSpec): FenceRail[] =>
  isWoven(spec)
    ? rails.flatMap(([part, key]) => {
        const pipe = spec[key];
        return pipe === null ? [] : [{ part, pipe }];
      })
    : [];
