import { begunBy } from './begunBy.ts';
import { choiceOf } from './choiceOf.ts';
import { languageCodes, languageOption } from './languageOption.ts';
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

/** What follows a verb that takes a language itself, with the one that stood before it: twice is once too often. */
const againAfter = (
  { options }: Verb,
  asked: string,
  rest: readonly string[],
): readonly string[] =>
  options.includes(languageOption) ? [`--${languageOption.name}=${asked}`, ...rest] : rest;

/**
 * The command line without its process: runs the verb that `args` begin with. What was found goes
 * to `io.out`, a refusal or what there is to mind to `io.err` as one line. No verb at all is `help`. Any verb may
 * have `--language` before it, which is spoken by then.
 */
export const runLath = async (args: readonly string[], io: Io): Promise<ExitCode> => {
  const begun = begunBy(args);
  if (!begun.ok) return refuse(io, begun.reason);
  const [first = 'help', ...rest] = begun.value.rest;
  const name = first === '--help' || first === '-h' ? 'help' : first;
  const verb = verbNamed(verbs(), name);
  if (!verb.ok) return refuse(io, verb.reason);
  const given = begun.value.asked === null ? rest : againAfter(verb.value, begun.value.asked, rest);
  return runVerb(verb.value, given, io);
};
