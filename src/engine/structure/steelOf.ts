import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Pipe } from '../../site/pipe.ts';
import { gradeOf } from '../../trade/gradeOf.ts';
import { pipeGrades, type PipeGrade } from '../../trade/steel.ts';

/** The steel of a pipe of a build: as the build says, else as the table has that pipe. */
export const steelOf = ({ grade }: Pick<FenceSpec, 'grade'>, pipe: Pipe): PipeGrade =>
  pipeGrades.find(({ label }) => label === grade) ?? gradeOf(pipe);
