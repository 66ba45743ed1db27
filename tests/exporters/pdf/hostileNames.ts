/** Names that a PDF, a file or a reader could trip over, each with what a reader is to show. */
export const hostileNames: readonly (readonly [name: string, shown: string])[] = [
  ['(a) \\ b) (', '(a) \\ b) ('],
  ['\\) /Title (x) >> endobj', '\\) /Title (x) >> endobj'],
  ['Größe ≤ 3 & <b>', 'Größe ≤ 3 & <b>'],
  ['Забор дом 7', 'Забор дом 7'],
  ['庭の柵', '庭の柵'],
  ['حديقة', 'حديقة'],
  ['\u{1F3E1} yard \u{20000}', '\u{1F3E1} yard \u{20000}'],
  // a letter whose two bytes in UTF-16 are a bracket and a backslash
  ['\u285c\u5c29', '\u285c\u5c29'],
  // what looks like the mark of a text in UTF-16
  ['þÿ(', 'þÿ('],
  ['two\nlines\u0000\u001b', 'two lines'],
  ['half \ud83c', 'half \ufffd'],
  ['x'.repeat(500), 'x'.repeat(500)],
  ['庭'.repeat(500), '庭'.repeat(500)],
];
