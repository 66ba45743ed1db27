import { useState } from 'react';
import type { SheetTableName } from '../../drawing/tables/sheetTables.ts';
import { usualUnit } from '../../importers/usualUnit.ts';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useLayout, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { download } from '../files/download.ts';
import { takeOut, type TakenOut, type TakeOutKind } from './takeOut.ts';

const inchesIn = { feet: 12, metres: 1000 / 25.4 } as const;
const units = [
  { value: 'feet', label: phrase`Feet` },
  { value: 'metres', label: phrase`Metres` },
] as const;

const tables = (
  [
    ['counts', phrase`To be built`],
    ['openings', phrase`Opening schedule`],
    ['workings', phrase`Workings of openings`],
    ['holes', phrase`Holes`],
    ['curves', phrase`Curves`],
    ['ties', phrase`Ties`],
    ['tie-checks', phrase`Checks of ties`],
    ['load', phrase`Load list`],
    ['cuts', phrase`Cut lists`],
    ['flags', phrase`Flags`],
    ['measured', phrase`Measuring`],
    ['structure', phrase`Structure`],
    ['towns', phrase`Rules of towns`],
    ['set-openings', phrase`Set record: openings`],
    ['set-leans', phrase`Set record: leans of posts`],
    ['set-leaves', phrase`Set record: leaves`],
    ['set-posts', phrase`Set record: posts`],
  ] as const satisfies readonly (readonly [SheetTableName, string])[]
).map(([value, label]) => ({ value, label }));

/** A number as surveys write it; null for another text. */
const numberIn = (text: string): number | null => {
  const plain = text.trim().replace(/(?<=\d),(?=\d{3}(?:\D|$))/g, '');
  return /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)$/.test(plain) && Math.abs(Number(plain)) <= 1e9
    ? Number(plain)
    : null;
};

const savedText = ({ name, mind = null }: TakenOut): string =>
  mind === null ? phrase`Saved ${name}` : phrase`Saved ${name}: ${mind}`;

/** What is taken out, in words. */
const kindWords: Readonly<Record<TakeOutKind, string>> = {
  DXF: 'DXF',
  GeoJSON: 'GeoJSON',
  stakes: phrase`stakes`,
  table: phrase`table`,
};

/** The yard for other programs and for a total station. */
export const TakeOutKeys = () => {
  const { session } = useBench();
  const site = useSite();
  const layout = useLayout();
  const [unit, setUnit] = useState<'feet' | 'metres'>(usualUnit(site.lengths.system));
  const [added, setAdded] = useState({ east: 0, north: 0 });
  const [table, setTable] = useState<SheetTableName>('openings');
  const each = inchesIn[unit];
  const take = async (kind: TakeOutKind) => {
    const stakes = { unit, east: added.east * each, north: added.north * each };
    try {
      const file = await takeOut(kind, { site, layout, stakes, table });
      if (file.ok) download(file.value);
      session.setState({
        say: file.ok ? savedText(file.value) : `${kindWords[kind]}: ${file.reason}`,
      });
    } catch {
      session.setState({
        say: phrase`The ${kindWords[kind]} could not be made: its parts are not on this device yet, and there is no connection`,
      });
    }
  };
  const addedField = (way: 'east' | 'north') => (
    <TextField
      label={way === 'east' ? phrase`Add to each easting` : phrase`Add to each northing`}
      value={String(added[way])}
      onEnter={(text) => {
        const number = numberIn(text);
        if (number === null) return phrase`expected a number such as 2100000, found “${text}”`;
        setAdded({ ...added, [way]: number });
        return null;
      }}
    />
  );
  return (
    <details className="more take-out">
      <summary>{phrase`For other programs and a total station`}</summary>
      <div className="choices">
        <button type="button" onClick={() => void take('DXF')}>{phrase`Download DXF`}</button>
        <button
          type="button"
          onClick={() => void take('GeoJSON')}
        >{phrase`Download GeoJSON`}</button>
      </div>
      <div className="pair">
        <ChoiceField label={phrase`Stakes in`} value={unit} choices={units} onChoose={setUnit} />
        {addedField('east')}
        {addedField('north')}
      </div>
      <div className="choices">
        <button
          type="button"
          onClick={() => void take('stakes')}
        >{phrase`Download stakes as CSV`}</button>
      </div>
      <div className="pair">
        <ChoiceField
          label={phrase`Table of the sheets`}
          value={table}
          choices={tables}
          onChoose={setTable}
        />
        <button
          type="button"
          onClick={() => void take('table')}
        >{phrase`Download table as CSV`}</button>
      </div>
      <p className="note">{phrase`Stakes are every post, then every mark without one: point number, northing, easting, height where the grade shots reach, description.`}</p>
    </details>
  );
};
