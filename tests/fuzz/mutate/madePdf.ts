import { deflateSync } from 'node:zlib';

/** An object of a PDF: its dictionary without brackets, and the bytes of its stream where it has one. */
export interface MadeObject {
  readonly fields: string;
  readonly stream?: Uint8Array;
}

const bytesOf = (text: string): Uint8Array => Buffer.from(text, 'latin1');

/** A PDF of objects in a row from 1 on, of which the first is its catalogue; without a list of where they are. */
export const madePdf = (objects: readonly MadeObject[], between = ''): Uint8Array => {
  const parts = objects.flatMap(({ fields, stream }, n) => {
    const head = bytesOf(`${n + 1} 0 obj\n<< ${fields} >>\n`);
    const held =
      stream === undefined ? [] : [bytesOf('stream\n'), stream, bytesOf('\nendstream\n')];
    return [head, ...held, bytesOf(`endobj\n${between}`)];
  });
  return new Uint8Array(
    Buffer.concat([
      bytesOf('%PDF-1.7\n'),
      ...parts,
      bytesOf('trailer\n<< /Root 1 0 R >>\nstartxref\n0\n%%EOF\n'),
    ]),
  );
};

/** The catalogue, the list of files and the description of one file, whose stream is object 4. */
export const carrying = (name = 'yard.site.json'): readonly MadeObject[] => [
  { fields: '/Type /Catalog /Names << /EmbeddedFiles 2 0 R >>' },
  { fields: `/Names [(${name}) 3 0 R]` },
  { fields: `/Type /Filespec /F (${name}) /UF (${name}) /EF << /F 4 0 R >>` },
];

/** The stream of a file as it is carried: packed, else in the filters that are named. */
export const carried = (bytes: Uint8Array, filter = '/FlateDecode'): MadeObject => ({
  fields: `/Type /EmbeddedFile /Subtype /application#2Fjson /Filter ${filter} /Length ${bytes.length}`,
  stream: bytes,
});

/** A PDF that carries a file. */
export const pdfCarrying = (text: string, name?: string): Uint8Array =>
  madePdf([...carrying(name), carried(new Uint8Array(deflateSync(text)))]);
