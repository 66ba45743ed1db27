import type { Io } from './io.ts';
import { withFootMarks } from './footMarks.ts';
import { readCall } from './readCall.ts';
import type { Answer, Verb } from './verb.ts';
import { helpOf } from './helpOf.ts';
import { verbs } from './verbs.ts';

/** 0 done, 1 a `stop` flag stands, 2 bad input. */
export type ExitCode = 0 | 1 | 2;

const refuse = (io: Io, reason: string): ExitCode => {
  io.err(`${reason.replace(/\s*\n\s*/g, ' ')}\n`);
  return 2;
};

const print = (io: Io, { text, json, stopped }: Answer, form: 'text' | 'json'): ExitCode => {
  const whole = form === 'json' ? JSON.stringify(json, null, 2) : text;
  io.out(whole.endsWith('\n') ? whole : `${whole}\n`);
  return stopped ? 1 : 0;
};

const runVerb = async (verb: Verb, args: readonly string[], io: Io): Promise<ExitCode> => {
  const call = readCall(verb, withFootMarks(args));
  if (!call.ok) return refuse(io, call.reason);
  if (call.value.values.has('help')) {
    io.out(`${helpOf(verb)}\n`);
    return 0;
  }
  const answer = await verb.run(call.value, io);
  if (!answer.ok) return refuse(io, answer.reason);
  return print(io, answer.value, call.value.values.has('json') ? 'json' : 'text');
};

/**
 * The command line without its process: runs the verb that `args` begin with. What was found goes
 * to `io.out`, a refusal to `io.err` as one line. No verb at all is `help`.
 */
export const runLath = async (args: readonly string[], io: Io): Promise<ExitCode> => {
  const [first = 'help', ...rest] = args;
  const name = first === '--help' || first === '-h' ? 'help' : first;
  const verb = verbs().find((one) => one.name === name);
  if (verb !== undefined) return runVerb(verb, rest, io);
  const known = verbs()
    .map((one) => one.name)
    .join(', ');
  return refuse(io, `lath: there is no verb “${name}”: expected one of ${known}`);
};
