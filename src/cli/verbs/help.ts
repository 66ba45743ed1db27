import { read } from '../../units/parsed.ts';
import { columns } from '../columns.ts';
import { helpClosing } from '../helpClosing.ts';
import { helpOf } from '../helpOf.ts';
import { usage } from '../usage.ts';
import type { Answer, Verb } from '../verb.ts';
import { verbNamed } from '../verbNamed.ts';
import { phrase } from '../../phrases/phrase.ts';

const described = (verb: Verb) => ({
  verb: verb.name,
  does: verb.does,
  usage: usage(verb),
  options: verb.options,
});

const all = (table: readonly Verb[]): Answer => {
  const lines = [
    phrase`lath VERB …; lath help VERB says more of one.`,
    '',
    ...columns(table.map((verb) => [verb.name, verb.does])).map((row) => `  ${row}`),
    '',
    ...helpClosing,
  ];
  return { text: lines.join('\n'), json: table.map(described), stopped: false };
};

/** `help`: every verb in one line each, or all of one. It is given the table that it stands in itself. */
export const help = (table: () => readonly Verb[]): Verb => ({
  name: 'help',
  does: phrase`says what there is, and how one verb is called`,
  places: ['[VERB]'],
  options: [],
  run: async ({ places: [name] }) => {
    if (name === undefined) return read(all(table()));
    const verb = verbNamed(table(), name);
    if (!verb.ok) return verb;
    return read({ text: helpOf(verb.value), json: described(verb.value), stopped: false });
  },
});
