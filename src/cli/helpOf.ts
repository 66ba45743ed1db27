import { columns } from './columns.ts';
import { helpClosing } from './helpClosing.ts';
import { usage } from './usage.ts';
import type { Verb } from './verb.ts';
import { phrase } from '../phrases/phrase.ts';

/** The page of help of one verb: what it does, how it is called, each option. */
export const helpOf = (verb: Verb): string => {
  const rows = [
    ...verb.options.map(({ name, value, does }) => [`--${name} ${value ?? ''}`.trim(), does]),
    ['--json', phrase`prints the result with its working as JSON`],
  ];
  return [
    verb.does,
    '',
    `  ${usage(verb)}`,
    '',
    ...columns(rows).map((row) => `  ${row}`),
    '',
    ...helpClosing,
  ].join('\n');
};
