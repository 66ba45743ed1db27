import { speak } from '../phrases/speak.ts';
import { languageIn } from './languageIn.ts';

/** The exit code of a fault in the program itself, apart from the three of `runLath`. */
const fault = 3;

// a reader such as `head` may leave before the end
process.stdout.on('error', () => process.exit(0));

try {
  const args = process.argv.slice(2);
  // texts of tables are made when they are loaded
  await speak(languageIn(args));
  const [{ nodeIo }, { runLath }] = await Promise.all([
    import('./nodeIo.ts'),
    import('./runLath.ts'),
  ]);
  process.exitCode = await runLath(args, nodeIo);
} catch (broken) {
  console.error(broken);
  process.exitCode = fault;
}
