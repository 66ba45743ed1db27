import { rowsOf, sheetTables, type SheetTableName } from '../drawing/tables/sheetTables.ts';
import type { Layout } from '../engine/layout.ts';
import { stakesToCsv, type StakesBy } from '../exporters/csv/stakesToCsv.ts';
import { toCsv } from '../exporters/csv/toCsv.ts';
import { toDxf } from '../exporters/dxf/toDxf.ts';
import { toGeoJson } from '../exporters/geojson/toGeoJson.ts';
import type { Site } from '../site/site.ts';
import { read, type Parsed } from '../units/parsed.ts';

/** What of a site is taken out as one file of text. */
export type Taken =
  | { readonly what: 'dxf' | 'geojson' }
  | { readonly what: 'stakes'; readonly by: StakesBy }
  | { readonly what: 'table'; readonly table: SheetTableName };

/** The text of such a file; for a table with how many rows it has, else null; what there is to mind of it. */
export interface TakenText {
  readonly text: string;
  readonly rows: number | null;
  readonly mind: string | null;
}

const whole = (text: string): TakenText => ({ text, rows: null, mind: null });

/** Writes it; unread with one line where the site cannot be written so. */
export const takenFile = (taken: Taken, site: Site, layout: Layout): Parsed<TakenText> => {
  switch (taken.what) {
    case 'dxf':
      return read(whole(toDxf(site, layout)));
    case 'geojson': {
      const text = toGeoJson(site, layout);
      return text.ok ? read(whole(text.value)) : text;
    }
    case 'stakes':
      return read(whole(stakesToCsv(site, layout, taken.by)));
    case 'table': {
      const { of, tables } = sheetTables(taken.table, site, layout);
      const { count: rows, none: mind } = rowsOf(tables);
      return read({ text: toCsv(of, tables), rows, mind });
    }
  }
};
