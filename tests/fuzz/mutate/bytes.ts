import type { Random } from '../random.ts';
import type { ByteMutation } from './mutation.ts';

/** Bytes that end, begin or break what is built of bytes. */
const odd = [0x00, 0x0a, 0x0d, 0x20, 0x22, 0x25, 0x2c, 0x2d, 0x30, 0x5b, 0x7b, 0x7f, 0x80, 0xff];

/** What is no UTF-8 (RFC 3629): a lone trail byte, an overlong form, half a pair, past the last letter. */
const unlettered = [
  [0x80],
  [0xc0, 0xaf],
  [0xed, 0xa0, 0x80],
  [0xf5, 0x80, 0x80, 0x80],
  [0xe2, 0x82],
  [0xff, 0xfe],
  [0xef, 0xbb, 0xbf],
];

const joined = (...parts: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
};

const slice = (bytes: Uint8Array, { below }: Random): readonly [number, number] => {
  const from = below(bytes.length);
  return [from, Math.min(bytes.length, from + 1 + below(below(4) === 0 ? bytes.length : 64))];
};

const put = (bytes: Uint8Array, at: number, more: Uint8Array): Uint8Array =>
  joined(bytes.subarray(0, at), more, bytes.subarray(at));

const flipBit: ByteMutation = (bytes, { below }) => {
  const changed = bytes.slice();
  const at = below(bytes.length);
  changed[at] = (changed[at] ?? 0) ^ (1 << below(8));
  return changed;
};

const setByte: ByteMutation = (bytes, random) => {
  const changed = bytes.slice();
  for (let n = random.below(8); n >= 0; n -= 1) {
    changed[random.below(bytes.length)] = random.chance(0.5) ? random.pick(odd) : random.below(256);
  }
  return changed;
};

const remove: ByteMutation = (bytes, random) => {
  const [from, to] = slice(bytes, random);
  return joined(bytes.subarray(0, from), bytes.subarray(to));
};

const repeat: ByteMutation = (bytes, random) => {
  const [from, to] = slice(bytes, random);
  const part = bytes.subarray(from, to);
  // what comes behind the first million bytes is cut off
  const times = Math.min(
    1 + random.below(random.pick([2, 2, 2, 200])),
    Math.ceil(1e6 / part.length),
  );
  return put(bytes, to, joined(...Array.from({ length: times }, () => part)));
};

const move: ByteMutation = (bytes, random) => {
  const [from, to] = slice(bytes, random);
  const rest = joined(bytes.subarray(0, from), bytes.subarray(to));
  return put(rest, random.below(rest.length), bytes.subarray(from, to));
};

const cut: ByteMutation = (bytes, { below }) => bytes.slice(0, below(bytes.length));

const cutFront: ByteMutation = (bytes, { below }) => bytes.slice(below(bytes.length));

const unletter: ByteMutation = (bytes, random) =>
  put(bytes, random.below(bytes.length), new Uint8Array(random.pick(unlettered)));

const flood: ByteMutation = (bytes, random) => {
  const size = random.pick([100, 10_000, 10_000, 300_000]);
  const part = new Uint8Array(size).fill(random.chance(0.7) ? random.pick(odd) : random.below(256));
  return put(bytes, random.below(bytes.length), part);
};

/** Ways to spoil any bytes, as in B. P. Miller, L. Fredriksen, B. So, CACM 33(12), 1990, and since. */
export const byteMutations: readonly ByteMutation[] = [
  flipBit,
  flipBit,
  setByte,
  remove,
  remove,
  repeat,
  move,
  cut,
  cutFront,
  unletter,
  flood,
];
