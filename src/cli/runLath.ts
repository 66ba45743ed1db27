import { choiceOf } from './choiceOf.ts';
import { languageCodes } from './languageOption.ts';
import type { Io } from './io.ts';
import { withFootMarks } from './footMarks.ts';
import { readCall } from './readCall.ts';
import type { Answer, Verb } from './verb.ts';
import { helpOf } from './helpOf.ts';
import { verbNamed } from './verbNamed.ts';
import { verbs } from './verbs.ts';

/** 0 done, 1 a `stop` flag stands, 2 bad input. */
export type ExitCode = 0 | 1 | 2;

/** A file may hold marks that would drive the terminal; line ends and tabs are ours. */
const harmless = (text: string): string => text.replace(/(?!\r?\n|\t)[\p{Cc}\u2028\u2029]/gu, '�');

const sayAside = (io: Io, line: string): void =>
  io.err(`${harmless(line.replace(/\s*\n\s*/g, ' '))}\n`);

const refuse = (io: Io, reason: string): ExitCode => {
  sayAside(io, reason);
  return 2;
};

const print = (
  io: Io,
  { text, json, stopped, mind = null }: Answer,
  form: 'text' | 'json',
): ExitCode => {
  const whole = form === 'json' ? JSON.stringify(json, null, 2) : harmless(text);
  io.out(whole.endsWith('\n') ? whole : `${whole}\n`);
  if (mind !== null) sayAside(io, mind);
  return stopped ? 1 : 0;
};

const runVerb = async (verb: Verb, args: readonly string[], io: Io): Promise<ExitCode> => {
  const call = readCall(verb, withFootMarks(args));
  if (!call.ok) return refuse(io, call.reason);
  if (call.value.values.has('help')) {
    io.out(`${helpOf(verb)}\n`);
    return 0;
  }
  const language = choiceOf(call.value, 'language', languageCodes);
  if (!language.ok) return refuse(io, language.reason);
  const answer = await verb.run(call.value, io);
  if (!answer.ok) return refuse(io, answer.reason);
  return print(io, answer.value, call.value.values.has('json') ? 'json' : 'text');
};

/**
 * The command line without its process: runs the verb that `args` begin with. What was found goes
 * to `io.out`, a refusal or what there is to mind to `io.err` as one line. No verb at all is `help`.
 */
export const runLath = async (args: readonly string[], io: Io): Promise<ExitCode> => {
  const [first = 'help', ...rest] = args;
  const name = first === '--help' || first === '-h' ? 'help' : first;
  const verb = verbNamed(verbs(), name);
  return verb.ok ? runVerb(verb.value, rest, io) : refuse(io, verb.reason);
};
