import { read } from '../../units/parsed.ts';
import { columns } from '../columns.ts';
import { usage } from '../usage.ts';
import type { Verb } from '../verb.ts';

const closing = [
  'SITE is a file; - reads standard input. Lengths are written as on a tape: 56 1/4, 9ft, 3005mm.',
  `A shell takes a lone foot mark for a quote: write 54ft or "54'".`,
  'Exit codes: 0 done, 1 a stop flag stands, 2 bad input.',
];

/** `help`: every verb in one line each. It is given the table that it stands in itself. */
export const help = (table: () => readonly Verb[]): Verb => ({
  name: 'help',
  does: 'says what there is',
  places: [],
  options: [],
  run: async () => {
    const rows = table().map((verb) => [verb.name, verb.does]);
    const lines = [
      'lath VERB …; lath VERB --help says more of one.',
      '',
      ...columns(rows).map((row) => `  ${row}`),
      '',
      ...closing,
    ];
    const json = table().map((verb) => ({
      verb: verb.name,
      does: verb.does,
      usage: usage(verb),
      options: verb.options,
    }));
    return read({ text: lines.join('\n'), json, stopped: false });
  },
});
