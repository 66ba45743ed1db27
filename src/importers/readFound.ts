import type { Found } from '../site/found.ts';
import type { Origin } from '../site/origin.ts';
import { unread, type Parsed } from '../units/parsed.ts';
import type { PointOrder } from './csv/pointColumns.ts';
import { fileKind, kindFault, looks } from './fileKind.ts';
import { fileText } from './fileText.ts';
import type { FileUnit } from './fileUnit.ts';

/** A file, and how it is to be read. */
export interface FileToRead {
  /** Null for what came without a name, which is read as what it looks like. */
  readonly name: string | null;
  readonly bytes: Uint8Array;
  /** Null for what the file says. */
  readonly unit: FileUnit | null;
  /** The unit of a file that says none. */
  readonly usual: FileUnit;
  readonly order: PointOrder | null;
  /** Where on earth 0, 0 of the site is; null where it does not know. */
  readonly origin: Origin | null;
}

/**
 * What a file has that can stand on a site, by the ending of its name or what it looks like; each format is loaded when it is
 * asked for. Unread with one line for a file that is no text, is not what its name says, breaks off or
 * has nothing.
 */
export const readFound = async (file: FileToRead): Promise<Parsed<Found>> => {
  const named = file.name === null ? null : fileKind(file.name);
  if (named?.ok === false) return named;
  const text = fileText(file.bytes);
  if (!text.ok) return text;
  const kind = named?.value ?? looks(text.value);
  const fault = kindFault(kind, text.value);
  if (fault !== null) return unread(fault);
  const { unit: chosen, usual, order, origin } = file;
  switch (kind) {
    case 'geojson':
      return (await import('./geojson/fromGeoJson.ts')).fromGeoJson(text.value, origin);
    case 'dxf':
      return (await import('./dxf/fromDxf.ts')).fromDxf(text.value, { chosen, usual });
    case 'csv':
      return (await import('./csv/pointsFromCsv.ts')).pointsFromCsv(text.value, {
        chosen,
        usual,
        order,
      });
  }
};
