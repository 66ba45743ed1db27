import { stepsAllAlong } from './stepsAllAlong.ts';
import type { SeatedCourse } from './seatLines.ts';

/** Whether what hangs along a course is level, and measured in plan: panels that step all along do. */
export const isLevel = ({ spec, course: { chain, legs } }: SeatedCourse): boolean =>
  spec.infill.kind === 'panels' &&
  stepsAllAlong(
    chain.line,
    legs.map(({ id }) => id),
  );
