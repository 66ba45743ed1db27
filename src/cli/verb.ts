import type { Parsed } from '../units/parsed.ts';
import type { Call } from './call.ts';
import type { Io } from './io.ts';
import type { Option } from './option.ts';

/** What a verb has to say: as text for people, as plain data for `--json`. */
export interface Answer {
  /** Lines; the last line break may be left out. */
  readonly text: string;
  readonly json: unknown;
  /** One line to mind beside what was found, to standard error; the exit code does not change. */
  readonly mind?: string | null;
  /** A `stop` flag stands: the exit code is 1. */
  readonly stopped: boolean;
}

/** One thing that the command line does. */
export interface Verb {
  readonly name: string;
  /** One line for `help`. */
  readonly does: string;
  /**
   * The word for each thing that is named without `--`, such as `SITE`; `[VERB]` may be left out, and a last
   * `[OTHER …]` may be given any number of times.
   */
  readonly places: readonly string[];
  readonly options: readonly Option[];
  /** A refusal is one line that says what, where and what was expected: the exit code is 2. */
  readonly run: (call: Call, io: Io) => Promise<Parsed<Answer>>;
}
