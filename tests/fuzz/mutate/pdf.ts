import { deflateSync } from 'node:zlib';
import type { Random } from '../random.ts';
import { oneBlock, packed } from './deflated.ts';
import { carried, carrying, madePdf, type MadeObject } from './madePdf.ts';
import type { ByteMutation } from './mutation.ts';
import { oddNumbers } from './text.ts';

const filters = [
  '/FlateDecode',
  '/LZWDecode',
  '/ASCII85Decode',
  '/ASCIIHexDecode',
  '/RunLengthDecode',
  '/DCTDecode',
  '/Crypt',
  '/JBIG2Decode',
  '[]',
  'null',
  '[/FlateDecode /FlateDecode]',
  '[/ASCII85Decode /FlateDecode]',
  '[/RunLengthDecode /RunLengthDecode /RunLengthDecode]',
  '/#46lateDecode',
  '9 0 R',
  `[${'/FlateDecode '.repeat(500)}]`,
];

const names = [
  '/ObjStm',
  '/XRef',
  '/Catalog',
  '/Kids',
  '/Names',
  '/EF',
  '/UF',
  '/Encrypt',
  '/Root',
  '/Parent',
];

/** Changes one place in what a PDF has of plain letters: a number, a reference, a filter, a name, a word. */
const changePlain = (text: string, random: Random): string => {
  const [form, by] = random.pick<readonly [RegExp, () => string]>([
    [/\d+ \d+ R/g, () => `${random.below(12)} 0 R`],
    [
      /\/(?:Length|Size|N|First|Index|W|Prev|Predictor|Columns) ?\[?\d+/g,
      () => `/Length ${random.pick(oddNumbers)}`,
    ],
    [/(?<=\/Length )\d+/g, () => random.pick(oddNumbers)],
    [/\/Filter ?(?:\/\w+|\[[^\]]*\])/g, () => `/Filter ${random.pick(filters)}`],
    [/\/[A-Z]\w+/g, () => random.pick(names)],
    [
      /endstream|endobj|stream|obj|xref|trailer|startxref|%%EOF/g,
      () => random.pick(['', 'obj', 'stream', '%']),
    ],
    [
      /<<|>>|\[|\]|\(|\)/g,
      () => random.pick(['', '<<', '>>', '[', ']', '(', ')', '<', '((((', '[[[[']),
    ],
    [
      /\n/g,
      () =>
        random.pick([
          '%',
          '<<'.repeat(30_000),
          '['.repeat(60_000),
          '('.repeat(9000),
          '%'.repeat(40_000),
          '1'.repeat(40_000),
          '1 '.repeat(9000),
        ]),
    ],
  ]);
  const spots = [...text.matchAll(form)];
  if (spots.length === 0) return text;
  const found = random.pick(spots);
  return text.slice(0, found.index) + by() + text.slice(found.index + found[0].length);
};

const a = 'a'.charCodeAt(0);

const listed = (type: string, stream: Uint8Array, more: string): MadeObject => ({
  fields: `/Type /${type} /Filter /FlateDecode /Length ${stream.length} ${more}`,
  stream,
});

const small = (): MadeObject => carried(new Uint8Array(deflateSync('{}')));

/** PDFs that are made to be more than they look. */
const made: readonly ((random: Random) => Uint8Array)[] = [
  ({ pick }) => madePdf([...carrying(), carried(packed(a, pick([1e6, 2e7, 1e8]), 1))]),
  ({ pick }) => madePdf([...carrying(), carried(oneBlock(a, pick([100, 40_000, 600_000])))]),
  ({ pick }) =>
    madePdf([
      ...carrying(),
      carried(packed(a, pick([1e6, 1e8]), 2), '[/FlateDecode /FlateDecode]'),
    ]),
  ({ pick }) => madePdf([...carrying(), carried(packed(a, 1e6, 1), pick(filters))]),
  ({ pick }) => {
    const more = `/N ${pick(['1', '1000000000', '-1', '1e9'])} /First ${pick(['4', '0', '1000000000', '-5'])}`;
    return madePdf([
      ...carrying(),
      small(),
      listed('ObjStm', oneBlock(0x20, pick([400, 500_000])), more),
    ]);
  },
  ({ pick }) => {
    const more = `/Size ${pick(['5', '1000000000'])} /W [${pick(['1 2 1', '1 1000000000 1', '0 0 0', '1'])}] /Index [0 ${pick(['5', '1000000000'])}] /Root 1 0 R`;
    return madePdf([...carrying(), small(), listed('XRef', packed(0, 100, 1), more)]);
  },
  ({ pick }) => {
    const count = pick([3, 400, 9000]);
    const kids = Array.from({ length: count }, (_, n) => ({
      fields: `/Kids [${n + 6} 0 R ${n + 5} 0 R]`,
    }));
    const [catalogue, , file] = carrying();
    return madePdf(
      [catalogue, { fields: '/Kids [5 0 R]' }, file, small(), ...kids].flatMap((one) => one ?? []),
    );
  },
  ({ pick }) =>
    madePdf(
      [...carrying(), small()],
      pick(['%', '1', '1 ', 'x', '(', '1 0 obj ', '9 9 ']).repeat(pick([9, 2000, 90_000])),
    ),
  ({ pick }) => {
    const [catalogue, list] = carrying();
    const loop = { fields: '/Type /Filespec /UF 3 0 R /EF 3 0 R /F 3 0 R' };
    return madePdf(
      [catalogue, pick([list, { fields: '/Names 2 0 R /Kids 2 0 R' }]), loop, small()].flatMap(
        (one) => one ?? [],
      ),
    );
  },
];

/** Spoils a PDF: numbers, references, filters, brackets; or one made to unpack to far more than it is. */
export const pdfMutation: ByteMutation = (bytes, random) => {
  if (random.chance(0.12)) return random.pick(made)(random);
  const text = Buffer.from(bytes).toString('latin1');
  let changed = text;
  for (let n = random.below(3); n >= 0; n -= 1) changed = changePlain(changed, random);
  return new Uint8Array(Buffer.from(changed, 'latin1'));
};
