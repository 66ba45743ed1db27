import type { Verb } from './verb.ts';
import { help } from './verbs/help.ts';
import { schema } from './verbs/schema.ts';

/** The table of verbs, in the order in which `help` names them. */
export const verbs = (): readonly Verb[] => [schema, help(verbs)];
