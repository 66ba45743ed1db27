import { rowsOf, sheetTables, type SheetTableName } from '../../drawing/tables/sheetTables.ts';
import type { Layout } from '../../engine/layout.ts';
import type { StakesBy } from '../../exporters/csv/stakesToCsv.ts';
import type { Site } from '../../site/site.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import type { Download } from '../files/download.ts';
import { fileStem } from '../../site/fileStem.ts';

/** What can be taken out for other programs. */
export type TakeOutKind = 'DXF' | 'GeoJSON' | 'stakes' | 'table';

interface Yard {
  readonly site: Site;
  readonly layout: Layout;
  readonly stakes: StakesBy;
  /** Which table of the sheets. */
  readonly table: SheetTableName;
}

/** A file, and what there is to mind of it. */
export interface TakenOut extends Download {
  readonly mind?: string | null;
}

/**
 * The file of one kind; what writes it is fetched when it is asked for, and throws when it is not on
 * the device. Unread with one line where the site cannot be written so.
 */
export const takeOut = async (kind: TakeOutKind, yard: Yard): Promise<Parsed<TakenOut>> => {
  const { site, layout, stakes, table } = yard;
  const stem = fileStem(site.job.name);
  switch (kind) {
    case 'DXF': {
      const { toDxf } = await import('../../exporters/dxf/toDxf.ts');
      return read({ name: `${stem}.dxf`, type: 'image/vnd.dxf', content: toDxf(site, layout) });
    }
    case 'GeoJSON': {
      const { toGeoJson } = await import('../../exporters/geojson/toGeoJson.ts');
      const text = toGeoJson(site, layout);
      if (!text.ok) return text;
      return read({ name: `${stem}.geojson`, type: 'application/geo+json', content: text.value });
    }
    case 'stakes': {
      const { stakesToCsv } = await import('../../exporters/csv/stakesToCsv.ts');
      const content = stakesToCsv(site, layout, stakes);
      return read({ name: `${stem}-stakes.csv`, type: 'text/csv;charset=utf-8', content });
    }
    case 'table': {
      const { toCsv } = await import('../../exporters/csv/toCsv.ts');
      const { of, tables } = sheetTables(table, site, layout);
      const name = `${stem}-${table}.csv`;
      const { none: mind } = rowsOf(tables);
      return read({ name, type: 'text/csv;charset=utf-8', content: toCsv(of, tables), mind });
    }
  }
};
