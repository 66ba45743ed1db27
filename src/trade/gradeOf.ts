import type { Inches } from '../units/inches.ts';
import { fencePipes } from './pipes.ts';
import { pipeGrades, type PipeGrade } from './steel.ts';

/**
 * The grade of a fence pipe by its actual outside diameter and wall, inches: that of the table where it has
 * just this pipe as high strength, else regular, which is the weaker.
 */
export const gradeOf = ({
  od,
  wall,
}: {
  readonly od: Inches;
  readonly wall: Inches;
}): PipeGrade => {
  const pipe = fencePipes.find((one) => one.od === od && one.wall === wall);
  const strong = pipe?.label.endsWith('high strength') === true ? 'high strength' : 'regular';
  return pipeGrades.find(({ label }) => label === strong) ?? pipeGrades[0];
};
