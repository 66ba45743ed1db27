import type { PdfInfo } from '../../../src/exporters/pdf/pdfInfo.ts';

/** What an invented PDF says of itself. */
export const someInfo: PdfInfo = {
  title: 'Back yard',
  author: 'A. Rep',
  subject: 'Crew sheet',
  keywords: ['fence', 'gates'],
  day: 'D:20260309',
  id: '0123456789abcdef0123456789abcdef',
};
