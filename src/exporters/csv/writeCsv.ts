import { startsFormula } from './startsFormula.ts';

const cell = (text: string | number): string => {
  // a number is none that a spreadsheet would run
  if (typeof text === 'number') return String(text);
  const harmless = startsFormula.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
};

/**
 * Rows of cells as comma-separated text (RFC 4180, CRLF line ends). A cell that a spreadsheet would
 * run as a formula gets an apostrophe before it, which `readCsv` takes off again; a number gets none,
 * so that what measures can read it.
 */
export const writeCsv = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
