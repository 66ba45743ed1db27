/** Which side of its column a text stands on. */
export type Side = 'left' | 'right';

const widest = (texts: readonly string[]): number =>
  texts.reduce((width, text) => Math.max(width, [...text].length), 0);

const padded = (text: string, width: number, side: Side): string => {
  const room = ' '.repeat(Math.max(0, width - [...text].length));
  return side === 'left' ? text + room : room + text;
};

/**
 * Rows as aligned lines, two spaces between the columns, none at the end of a line. Columns
 * without a side stand on the left; a row may be short; a line end in a text is a blank. No rows
 * give no lines.
 */
export const columns = (
  rows: readonly (readonly string[])[],
  sides: readonly Side[] = [],
): string[] => {
  const cells = rows.map((row) => row.map((text) => text.replace(/\s+/g, ' ')));
  const count = cells.reduce((most, row) => Math.max(most, row.length), 0);
  const widths = Array.from({ length: count }, (_, n) => widest(cells.map((row) => row[n] ?? '')));
  return cells.map((row) =>
    row
      .map((text, n) => padded(text, widths[n] ?? 0, sides[n] ?? 'left'))
      .join('  ')
      .trimEnd(),
  );
};
