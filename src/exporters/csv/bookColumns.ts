import type { Hardware } from '../../site/hardware.ts';
import type { Inches } from '../../units/inches.ts';
import { exactText } from './exactText.ts';

const text = (length: Inches | undefined | null): string =>
  length === undefined || length === null ? '' : exactText(length);

const size =
  (end: keyof Hardware['takes']) =>
  ({ kind, takes }: Hardware): string =>
    kind === 'closer' ? '' : exactText(takes[end]);

/** What the book's file has of each part, column by column, and how it is written. */
export const bookColumns = [
  { name: 'Kind', write: ({ kind }: Hardware) => kind },
  { name: 'Name', write: ({ label }: Hardware) => label },
  { name: 'Low', write: size('low') },
  { name: 'Planned', write: size('planned') },
  { name: 'High', write: size('high') },
  { name: 'Spread', write: ({ spread }: Hardware) => spread },
  { name: 'Known from', write: ({ from }: Hardware) => from },
  { name: 'Day', write: ({ on }: Hardware) => on },
  { name: 'Readings', write: ({ readings }: Hardware) => readings.map(exactText).join('; ') },
  { name: 'Post from', write: ({ fits }: Hardware) => text(fits.post?.low) },
  { name: 'Post to', write: ({ fits }: Hardware) => text(fits.post?.high) },
  { name: 'Frame from', write: ({ fits }: Hardware) => text(fits.frame?.low) },
  { name: 'Frame to', write: ({ fits }: Hardware) => text(fits.frame?.high) },
  { name: 'Pin', write: ({ pin }: Hardware) => text(pin) },
  { name: 'Remark', write: ({ remark }: Hardware) => remark },
] as const;

/** The column that tells parts of one name apart: the part's id without its kind. */
export const keyColumn = 'Key';

export type BookColumn = (typeof bookColumns)[number]['name'] | typeof keyColumn;
