/** Spreadsheets run a cell that begins so as a formula; one that is kept from it already begins so too. */
const startsFormula = /^'*[=+\-@\t\r]/;

const cell = (text: string): string => {
  const harmless = startsFormula.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
};

/**
 * Rows of cells as comma-separated text (RFC 4180, CRLF line ends). A cell that a spreadsheet would
 * run as a formula gets an apostrophe before it, which `readCsv` takes off again.
 */
export const writeCsv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
