import type { Verb } from './verb.ts';
import { bring } from './verbs/bring.ts';
import { calls } from './verbs/calls.ts';
import { compare } from './verbs/compare.ts';
import { flags } from './verbs/flags.ts';
import { footing } from './verbs/footing.ts';
import { help } from './verbs/help.ts';
import { layout } from './verbs/layout.ts';
import { load } from './verbs/load.ts';
import { merge } from './verbs/merge.ts';
import { opening } from './verbs/opening.ts';
import { proposal } from './verbs/proposal.ts';
import { schema } from './verbs/schema.ts';
import { sheet } from './verbs/sheet.ts';
import { spacing } from './verbs/spacing.ts';
import { survey } from './verbs/survey.ts';
import { take } from './verbs/take.ts';
import { wind } from './verbs/wind.ts';

/** The table of verbs, in the order in which `help` names them. */
export const verbs = (): readonly Verb[] => [
  layout,
  sheet,
  load,
  compare,
  proposal,
  flags,
  opening,
  spacing,
  survey,
  calls,
  bring,
  take,
  merge,
  footing,
  wind,
  schema,
  help(verbs),
];
