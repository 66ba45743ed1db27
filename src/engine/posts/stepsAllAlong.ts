import type { FenceLine } from '../../site/fenceLine.ts';
import type { VertexId } from '../../site/ids.ts';

/** Whether fence steps on every one of some legs of its line: level things then fit between posts in plan. */
export const stepsAllAlong = (
  { stepped }: Pick<FenceLine, 'stepped'>,
  legs: readonly VertexId[],
): boolean => legs.length > 0 && legs.every((id) => stepped[id] === true);
