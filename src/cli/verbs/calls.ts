import { balanceTable, courseTable } from '../../drawing/tables/callTables.ts';
import { pieceText } from '../../drawing/tables/pieceText.ts';
import type { Table } from '../../drawing/tables/table.ts';
import { callRemarks, type CallTerms } from '../../engine/calls/callRemarks.ts';
import type { CallPiece, Calls } from '../../engine/calls/calls.ts';
import { closureText } from '../../engine/calls/closureText.ts';
import { readCalls } from '../../engine/calls/readCalls.ts';
import { traverse, type Traverse } from '../../engine/calls/traverse.ts';
import { boundaryCaution } from '../../trade/cautions.ts';
import { usualCallClosing } from '../../trade/callClosings.ts';
import { formatArea } from '../../units/formatArea.ts';
import { formatLength } from '../../units/formatLength.ts';
import { landUnits, type LandUnit } from '../../units/landUnits.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { parseParts } from '../../units/parseParts.ts';
import { quotedText } from '../../units/quotedText.ts';
import { valueOf, type Call } from '../call.ts';
import { columns } from '../columns.ts';
import type { Io } from '../io.ts';
import { tableLines } from '../tableLines.ts';
import type { Answer, Verb } from '../verb.ts';
import { levelWords } from '../levelWords.ts';
import { phrase } from '../../phrases/phrase.ts';

const readUnit = (call: Call): Parsed<LandUnit['name']> => {
  const text = valueOf(call, 'unit') ?? 'feet';
  const unit = landUnits.find(({ name }) => name === text.trim().toLowerCase());
  if (unit !== undefined) return read(unit.name);
  const names = landUnits.map(({ name }) => name).join(', ');
  return unread(
    phrase`--unit: ${quotedText(text)} is not a unit of land: expected one of ${names}`,
  );
};

const readParts = (call: Call): Parsed<number> => {
  const parts = parseParts(valueOf(call, 'closure') ?? `${usualCallClosing}`);
  return parts.ok ? parts : unread(phrase`--closure: ${parts.reason}`);
};

const pieceRows = (pieces: readonly CallPiece[], { style }: CallTerms): string[][] =>
  pieces.flatMap((piece) => [
    [phrase`line ${piece.line}`, quotedText(piece.text), pieceText(piece, style)],
    ...piece.doubts.map((doubt) => ['', '', doubt]),
  ]);

const tablesOf = (calls: Calls, told: Traverse, { style }: CallTerms): readonly Table[] => [
  courseTable(calls.ties, { title: phrase`Ties to the point of beginning`, style }),
  courseTable(calls.courses, { title: phrase`Courses`, style }),
  balanceTable(told, style),
];

const answer = (calls: Calls, told: Traverse, terms: CallTerms): Answer => {
  const remarks = callRemarks(calls, told, terms);
  const { lot, perimeter } = told;
  const tables = tablesOf(calls, told, terms).filter(({ rows }) => rows.length > 0);
  const lines = [
    ...columns(pieceRows(calls.pieces, terms)),
    ...tables.flatMap((table) => ['', table.title, ...tableLines(table)]),
    '',
    phrase`perimeter ${formatLength(perimeter, terms.style)}`,
    closureText(told, terms.style),
    ...(lot === null ? [] : [phrase`area ${formatArea(lot.area)}`]),
    ...columns(remarks.map(({ level, text }) => [levelWords[level], text])),
    boundaryCaution.text,
  ];
  return {
    text: lines.join('\n'),
    json: {
      ...calls,
      traverse: told,
      remarks,
      closure: terms.parts,
      caution: boundaryCaution.text,
    },
    stopped: remarks.some(({ level }) => level === 'stop'),
  };
};

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const unit = readUnit(call);
  if (!unit.ok) return unit;
  const parts = readParts(call);
  if (!parts.ok) return parts;
  const [path = '-'] = call.places;
  const text = await io.readText(path);
  if (!text.ok) return text;
  const name = path === '-' ? phrase`standard input` : path;
  const calls = readCalls(text.value, unit.value);
  if (!calls.ok) return unread(`${name}: ${calls.reason}`);
  if (calls.value.pieces.length === 0) {
    return unread(phrase`${name}: has no calls: expected a line such as N 26°10' E 285.10 feet`);
  }
  const system = unit.value === 'metres' ? 'm' : 'decimal feet';
  const terms = { parts: parts.value, style: { system, fraction: 16 } } as const;
  return read(answer(calls.value, traverse(calls.value), terms));
};

/** `calls`: deed or plat calls read, walked along and balanced. */
export const calls: Verb = {
  name: 'calls',
  does: phrase`reads deed or plat calls: misclosure, precision, area, balanced by the compass rule`,
  places: ['FILE'],
  options: [
    {
      name: 'unit',
      value: 'UNIT',
      needed: false,
      repeats: false,
      does: phrase`what a distance without a unit is in: feet (else), chains, rods, metres`,
    },
    {
      name: 'closure',
      value: 'N',
      needed: false,
      repeats: false,
      does: phrase`the n of 1:n that they have to close to; else ${usualCallClosing}`,
    },
  ],
  run,
};
