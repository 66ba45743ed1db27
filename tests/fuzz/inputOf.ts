import { byteMutations } from './mutate/bytes.ts';
import { csvMutation } from './mutate/csv.ts';
import { dxfMutation } from './mutate/dxf.ts';
import { geoJsonMutation } from './mutate/geojson.ts';
import { jsonMutation } from './mutate/json.ts';
import type { ByteMutation, TextMutation } from './mutate/mutation.ts';
import { pdfMutation } from './mutate/pdf.ts';
import { pictureMutation } from './mutate/picture.ts';
import { textMutations } from './mutate/text.ts';
import { random, type Random } from './random.ts';
import { kinds, type Kind, type Seeds } from './seeds.ts';

/** A spoilt file. */
export interface Input {
  readonly kind: Kind;
  readonly bytes: Uint8Array;
}

/** No input is larger, so that time and memory can be held against its size. */
export const mostBytes = 1_000_000;

const inText =
  (change: TextMutation): ByteMutation =>
  (bytes, of) =>
    new TextEncoder().encode(change(new TextDecoder().decode(bytes), of).slice(0, mostBytes));

const anyText: ByteMutation = (bytes, of) => inText(of.pick(textMutations))(bytes, of);
const anyBytes: ByteMutation = (bytes, of) => of.pick(byteMutations)(bytes, of);

const rows = [inText(csvMutation), inText(csvMutation), anyText, anyText, anyBytes];
const json = [inText(jsonMutation), inText(jsonMutation), inText(jsonMutation), anyText, anyBytes];

/** How each kind is spoilt: by what it is built of, as a text, as bytes. */
const mutations: Readonly<Record<Kind, readonly ByteMutation[]>> = {
  'site file': json,
  'crew sheet': [pdfMutation, pdfMutation, anyBytes],
  GeoJSON: [...json, inText(geoJsonMutation), inText(geoJsonMutation)],
  DXF: [inText(dxfMutation), inText(dxfMutation), inText(dxfMutation), anyText, anyBytes],
  points: rows,
  'grade shots': rows,
  'price list': rows,
  'hardware book': rows,
  'town rules': rows,
  picture: [anyBytes, pictureMutation, pictureMutation],
  deed: [anyText, anyText, anyBytes],
  figure: [anyText, anyBytes],
};

/** Kinds that say more come oftener. */
const drawn: readonly Kind[] = [
  ...kinds,
  'site file',
  'site file',
  'crew sheet',
  'GeoJSON',
  'DXF',
  'DXF',
];

const spoilt = (kind: Kind, sound: Uint8Array, of: Random): Uint8Array => {
  let bytes = sound;
  const times = of.pick([1, 1, 1, 2, 2, 3, 5]);
  for (let n = 0; n < times && bytes.length > 0; n += 1) {
    bytes = of.pick(mutations[kind])(bytes, of).subarray(0, mostBytes);
  }
  return bytes;
};

/** The input of a number: the same for the same seed, whichever others are made. */
export const inputOf = (seeds: Seeds, seed: number, input: number): Input => {
  const of = random(seed, input);
  const kind = of.pick(drawn);
  return { kind, bytes: spoilt(kind, of.pick(seeds[kind]), of) };
};
