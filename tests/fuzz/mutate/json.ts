import type { Random } from '../random.ts';
import type { TextMutation } from './mutation.ts';
import { oddNumbers, oddWords } from './text.ts';

type Box = Record<string, unknown> | unknown[];

const isBox = (value: unknown): value is Box => typeof value === 'object' && value !== null;

/** Every object and list of a value, those that are deep as well. */
const boxesIn = (root: unknown): Box[] => {
  const [all, open]: [Box[], unknown[]] = [[], [root]];
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    if (!isBox(one)) continue;
    if (Object.keys(one).length > 0) all.push(one);
    open.push(...Object.values(one).filter(isBox));
  }
  return all;
};

/** Written in place of what JSON.stringify would not write; put in when the text is made. */
const stand = (raw: string): string => `\u0001${raw}\u0001`;

const deep = (random: Random): string => {
  const depth = random.pick([5, 13, 200, 5000, 100_000]);
  return random.chance(0.5)
    ? stand('['.repeat(depth) + ']'.repeat(depth))
    : stand('{"a":'.repeat(depth) + '1' + '}'.repeat(depth));
};

const otherKind = (random: Random): unknown =>
  random.pick<() => unknown>([
    () => null,
    () => true,
    () => [],
    () => ({}),
    () => '',
    () => [[]],
    () => stand(random.pick(oddNumbers.filter((one) => /^-?[\d.]+(?:e-?\d+)?$/.test(one)))),
    () => random.pick(oddWords),
    () => 'x'.repeat(random.pick([41, 201, 4001, 50_000])),
    () => deep(random),
    () => random.below(1e6) - 5e5,
  ])();

const set = (box: Box, key: string, value: unknown): void => {
  // a plain assignment of __proto__ would be lost
  Object.defineProperty(box, key, { value, enumerable: true, configurable: true, writable: true });
};

const changes: readonly ((box: Box, key: string, random: Random, all: readonly Box[]) => void)[] = [
  (box, key) => {
    if (Array.isArray(box)) box.splice(Number(key), 1);
    else delete box[key];
  },
  (box, key, random) => set(box, key, otherKind(random)),
  (box, key, random) => set(box, key, otherKind(random)),
  (box, key, random) => {
    const value = Reflect.get(box, key) as unknown;
    const near = [(n: number) => -n, (n: number) => n * 1e6, (n: number) => n + 0.1, () => 0];
    set(box, key, typeof value === 'number' ? random.pick(near)(value) : otherKind(random));
  },
  (box, key, random) => {
    const value = Reflect.get(box, key) as unknown;
    if (!Array.isArray(box)) delete box[key];
    set(box, random.chance(0.5) ? random.pick(oddWords) : `${key}x`, value);
  },
  (box, key, random, all) => {
    const other = random.pick(all);
    const name = random.pick(Object.keys(other));
    const [mine, theirs] = [Reflect.get(box, key) as unknown, Reflect.get(other, name) as unknown];
    // what lies within the other would make a ring
    if (isBox(mine) || isBox(theirs)) return;
    set(box, key, theirs);
    set(other, name, mine);
  },
  (box, key, random, all) => {
    const copy = structuredClone(random.pick(all));
    set(box, Array.isArray(box) ? key : random.pick([key, 'mark:1', 'vertex:1', 'extra']), copy);
  },
  (box, key, random) => {
    const value = Reflect.get(box, key) as unknown;
    const room = Math.ceil(500_000 / (JSON.stringify(value) ?? '').length);
    const times = Math.min(room, random.pick([1, 20, 2000]));
    for (let n = 0; n < times; n += 1) {
      if (Array.isArray(box)) box.push(value);
      else set(box, `${key}${n}`, value);
    }
  },
];

const written = (value: unknown): string =>
  JSON.stringify(value).replace(/"\\u0001((?:[^"\\]|\\.)*)\\u0001"/g, (_, raw: string) =>
    raw.replaceAll('\\"', '"'),
  );

const changed = (root: unknown, random: Random): string => {
  for (let n = random.below(3); n >= 0; n -= 1) {
    const all = boxesIn(root);
    if (all.length === 0) break;
    const box = random.pick(all);
    random.pick(changes)(box, random.pick(Object.keys(box)), random, all);
  }
  return written(root);
};

/**
 * Spoils what a text of JSON holds and leaves it JSON: fields taken out, of another kind, swapped, renamed. What
 * is none, or lies deeper than can be written again, stays as it is.
 */
export const jsonMutation: TextMutation = (text, random) => {
  try {
    return changed(JSON.parse(text) as unknown, random);
  } catch {
    return text;
  }
};
