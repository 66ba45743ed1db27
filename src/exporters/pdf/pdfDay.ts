/**
 * A day of the calendar such as `2026-03-09` as a PDF writes one, `D:20260309` (ISO 32000-1, 7.9.4: all after
 * the year may be left out). Null for any other text: whether 3/9 is in March nobody knows.
 */
export const pdfDay = (text: string): string | null => {
  const day = text.trim();
  const [, year = '', month = '', date = ''] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(day) ?? [];
  const time = Date.UTC(Number(year), Number(month) - 1, Number(date));
  const stays = year !== '' && new Date(time).toISOString().startsWith(day);
  return stays ? `D:${year}${month}${date}` : null;
};
