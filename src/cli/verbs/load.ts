import { cutTable } from '../../drawing/tables/cutTable.ts';
import { loadTable } from '../../drawing/tables/loadTable.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { loadOf } from '../../engine/load/loadOf.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { read, unread } from '../../units/parsed.ts';
import { isGiven } from '../call.ts';
import { readSite } from '../readSite.ts';
import { tableLines } from '../tableLines.ts';
import type { Verb } from '../verb.ts';

/** `load`: everything that goes on the truck, each count with its rule. */
export const load: Verb = {
  name: 'load',
  does: 'lists what goes on the truck',
  places: ['SITE'],
  options: [
    {
      name: 'csv',
      value: null,
      needed: false,
      repeats: false,
      does: 'prints the list for a spreadsheet',
    },
    {
      name: 'cuts',
      value: null,
      needed: false,
      repeats: false,
      does: 'prints how sticks and rolls are cut instead of the list',
    },
  ],
  run: async (call, io) => {
    if (isGiven(call, 'csv') && isGiven(call, 'json')) {
      return unread('lath load: --csv and --json: expected one of them');
    }
    const site = await readSite(io, call.places[0] ?? '-');
    if (!site.ok) return site;
    const layout = layOutSite(site.value);
    const found = loadOf(site.value, layout);
    const cuts = isGiven(call, 'cuts');
    const tables = cuts
      ? found.tickets.map((one) => cutTable(one, site.value))
      : [loadTable(found, site.value)];
    const lines = tables.flatMap((table) => [
      ...(cuts ? [table.title] : []),
      ...(table.rows.length === 0 ? [] : tableLines(table)),
    ]);
    const text = isGiven(call, 'csv')
      ? toCsv(cuts ? 'Cut of' : 'List', tables)
      : (lines.length === 0 ? ['nothing to load'] : lines).join('\n');
    const stopped = layout.flags.some(({ level }) => level === 'stop');
    return read({ text, json: found, stopped });
  },
};
