import { runLath, type ExitCode } from '../../src/cli/runLath.ts';
import { memoryIo } from './memoryIo.ts';

/** What one call of the command line said and gave back. */
export interface Said {
  readonly code: ExitCode;
  readonly out: string;
  readonly err: string;
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

/** Calls the command line over files in memory. */
export const lath = async (
  args: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>> = {},
): Promise<Said> => {
  const world = memoryIo(files);
  const code = await runLath(args, world.io);
  return { code, ...world.printed, files: world.files };
};
