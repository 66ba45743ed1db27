import { spawnSync } from 'node:child_process';
import { knownBad } from './knownBad.ts';
import { registryAnswer } from './registryAnswer.ts';

// a registry that cannot be reached is not waited for
const options = ['--json', '--fetch-retries=0', '--fetch-timeout=20000'];
const { stdout } = spawnSync('npm', ['audit', ...options], {
  encoding: 'utf8',
  shell: process.platform === 'win32',
});
const accepted = knownBad.filter((bad) => bad.accepted !== undefined).map(({ source }) => source);
const answer = registryAnswer(stdout ?? '', accepted);
if (!answer.asked) {
  console.log(
    `The registry could not be asked for known faults (${answer.why}): only the list in tests/audit/knownBad.json was compared, by the unit tests.`,
  );
} else if (answer.faults.length === 0) {
  console.log('The registry knows no high or critical fault of what is locked.');
} else {
  console.error(answer.faults.join('\n'));
  process.exitCode = 1;
}
