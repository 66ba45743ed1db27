import { sheetTableNames, type SheetTableName } from '../drawing/tables/sheetTables.ts';
import type { StakesBy } from '../exporters/csv/stakesToCsv.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { valueOf, type Call } from './call.ts';
import { choiceOf } from './choiceOf.ts';
import type { Option } from './option.ts';
import type { Taken } from './takenFile.ts';
import { phrase } from '../phrases/phrase.ts';

const tableNames: readonly (SheetTableName | 'stakes')[] = ['stakes', ...sheetTableNames];
const inchesIn = { feet: 12, metres: 1000 / 25.4 } as const;

const numberOf = (call: Call, name: string): Parsed<number> => {
  const text = valueOf(call, name);
  if (text === null) return read(0);
  if (/^[-+]?(?:\d+(?:\.\d*)?|\.\d+)$/.test(text) && Math.abs(Number(text)) <= 1e9) {
    return read(Number(text));
  }
  return unread(phrase`--${name}: ${quotedText(text)}: expected a number such as 2100000`);
};

const stakesOf = (call: Call): Parsed<StakesBy> => {
  const unit = choiceOf(call, 'unit', ['feet', 'metres'] as const);
  if (!unit.ok) return unit;
  const east = numberOf(call, 'east');
  if (!east.ok) return east;
  const north = numberOf(call, 'north');
  if (!north.ok) return north;
  const each = inchesIn[unit.value ?? 'feet'];
  return read({ unit: unit.value ?? 'feet', east: east.value * each, north: north.value * each });
};

/** What a call of `take` asks for besides pages; a CSV is of stakes unless another table is named. */
export const takenOf = (call: Call, ending: 'geojson' | 'dxf' | 'csv'): Parsed<Taken> => {
  if (ending !== 'csv' && valueOf(call, 'table') !== null) {
    return unread(phrase`--table: only a file that ends in .csv is a table`);
  }
  const table = choiceOf(call, 'table', tableNames);
  if (!table.ok) return table;
  const by = stakesOf(call);
  if (!by.ok) return by;
  if (ending !== 'csv') return read({ what: ending });
  if (table.value === null || table.value === 'stakes')
    return read({ what: 'stakes', by: by.value });
  return read({ what: 'table', table: table.value });
};

const option = { needed: false, repeats: false };

/** The options of tables. */
export const tableOptions: readonly Option[] = [
  {
    ...option,
    name: 'table',
    value: tableNames.join('|'),
    does: phrase`which table a CSV is; stakes unless given`,
  },
  { ...option, name: 'unit', value: 'feet|metres', does: phrase`of stakes; feet unless given` },
  { ...option, name: 'east', value: 'NUMBER', does: phrase`added to every easting of stakes` },
  { ...option, name: 'north', value: 'NUMBER', does: phrase`added to every northing of stakes` },
];
