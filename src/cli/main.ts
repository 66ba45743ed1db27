import { nodeIo } from './nodeIo.ts';
import { runLath } from './runLath.ts';

/** The exit code of a fault in the program itself, apart from the three of `runLath`. */
const fault = 3;

// a reader such as `head` may leave before the end
process.stdout.on('error', () => process.exit(0));

try {
  process.exitCode = await runLath(process.argv.slice(2), nodeIo);
} catch (broken) {
  console.error(broken);
  process.exitCode = fault;
}
