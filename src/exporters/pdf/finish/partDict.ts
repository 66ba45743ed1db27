import { PDFArray, PDFDict, PDFName, PDFNumber, type PDFContext, type PDFRef } from 'pdf-lib';

const [S, P, Pg, K] = (['S', 'P', 'Pg', 'K'] as const).map((key) => PDFName.of(key)) as [
  PDFName,
  PDFName,
  PDFName,
  PDFName,
];
const roles = {
  P: PDFName.of('P'),
  TR: PDFName.of('TR'),
  TH: PDFName.of('TH'),
  TD: PDFName.of('TD'),
} as const;

/** A part of the structure: what it is, under which other and on which page it stands, and what is in it. */
export interface StructurePart {
  readonly role: keyof typeof roles;
  readonly under: PDFRef;
  readonly page: PDFRef;
  /** The number of one mark, or the numbers of some, or other parts. */
  readonly kids: number | readonly (number | PDFRef)[];
}

const kidsOf = (context: PDFContext, kids: StructurePart['kids']): PDFNumber | PDFArray => {
  if (typeof kids === 'number') return PDFNumber.of(kids);
  const all = PDFArray.withContext(context);
  for (const kid of kids) all.push(typeof kid === 'number' ? PDFNumber.of(kid) : kid);
  return all;
};

/**
 * A part of the structure as the document holds it. There are many thousands in a set: their keys are not looked
 * up by their letters as `context.obj` does.
 */
export const partDict = (
  context: PDFContext,
  { role, under, page, kids }: StructurePart,
): PDFDict => {
  const own = kidsOf(context, kids);
  const entries: [PDFName, PDFName | PDFRef | PDFNumber | PDFArray][] =
    role === 'P'
      ? [
          [P, under],
          [Pg, page],
          [S, roles.P],
          [K, own],
        ]
      : [
          [S, roles[role]],
          [P, under],
          [Pg, page],
          [K, own],
        ];
  return PDFDict.fromMapWithContext(new Map(entries), context);
};
