import type { Random } from '../random.ts';
import type { TextMutation } from './mutation.ts';
import { oddNumbers, oddWords } from './text.ts';

type Pair = [code: string, value: string];

const pairsOf = (text: string): Pair[] => {
  const lines = text.split(/\r?\n/);
  return Array.from({ length: Math.floor(lines.length / 2) }, (_, n): Pair => [
    lines[2 * n] ?? '',
    lines[2 * n + 1] ?? '',
  ]);
};

const codes = [
  '0',
  '2',
  '5',
  '8',
  '10',
  '20',
  '30',
  '40',
  '41',
  '42',
  '50',
  '62',
  '67',
  '70',
  '71',
];
const types = [
  'LINE',
  'LWPOLYLINE',
  'POLYLINE',
  'VERTEX',
  'SEQEND',
  'INSERT',
  'ARC',
  'CIRCLE',
  'MTEXT',
];
const frames = [
  'SECTION',
  'ENDSEC',
  'BLOCK',
  'ENDBLK',
  'TABLE',
  'ENDTAB',
  'LAYER',
  'EOF',
  'SPLINE',
  'HATCH',
];

const changes: readonly ((pairs: Pair[], at: number, random: Random) => void)[] = [
  (pairs, at) => void pairs.splice(at, 1),
  (pairs, at, random) => void pairs.splice(at, 1 + random.below(20)),
  (pairs, at, random) => {
    const other = random.below(pairs.length);
    const [one, two] = [pairs[at], pairs[other]];
    if (one !== undefined && two !== undefined) [one[0], two[0]] = [two[0], one[0]];
  },
  (pairs, at, random) => {
    const pair = pairs[at];
    if (pair !== undefined) pair[0] = random.pick([...codes, '-5', '1071', '99999', 'x', '']);
  },
  (pairs, at, random) => {
    const pair = pairs[at];
    if (pair !== undefined) pair[1] = random.pick(random.chance(0.8) ? oddNumbers : oddWords);
  },
  (pairs, at, random) => {
    const some = pairs
      .slice(at, at + 1 + random.below(30))
      .map(([code, value]): Pair => [code, value]);
    pairs.splice(random.below(pairs.length), 0, ...some);
  },
  (pairs, at, random) => void pairs.splice(at, 0, ['0', random.pick([...types, ...frames])]),
];

/** A block that holds itself, and others, in rows and columns; with ends left out now and then. */
const inserts = (random: Random): string => {
  const count = random.pick([1, 3, 12, 40]);
  const named = (n: number) => `B${n % count}`;
  const insert = (n: number) =>
    `0\nINSERT\n8\n0\n2\n${named(n)}\n10\n${random.pick(oddNumbers)}\n20\n0\n41\n${random.pick(['1', '-1', '0', '1e300', '1e-300'])}\n70\n${random.pick(['1', '10', '32767', '-1', '1e9'])}\n71\n${random.pick(['1', '20'])}\n44\n${random.pick(oddNumbers)}\n`;
  const blocks = Array.from({ length: count }, (_, n) => {
    const inside = Array.from({ length: 1 + random.below(8) }, (__, m) =>
      random.chance(0.3) ? '0\nLINE\n8\n0\n10\n0\n20\n0\n11\n9\n21\n9\n' : insert(n + 1 + m),
    ).join('');
    const end = random.chance(0.9) ? '0\nENDBLK\n' : '';
    return `0\nBLOCK\n2\n${named(n)}\n10\n0\n20\n0\n${inside}${end}`;
  }).join('');
  return `0\nSECTION\n2\nBLOCKS\n${blocks}0\nENDSEC\n0\nSECTION\n2\nENTITIES\n${insert(0)}0\nENDSEC\n0\nEOF\n`;
};

/** Curves of any size, stretched to ellipses. */
const curves = (random: Random): string => {
  const size = () =>
    random.pick(['1', '1e3', '1e6', '1e9', '1e15', '1e100', '1e300', '1e-300', '0', '-5']);
  const all = Array.from({ length: 1 + random.below(40) }, () =>
    random.pick([
      () => `0\nCIRCLE\n8\n0\n10\n${size()}\n20\n0\n40\n${size()}\n`,
      () => `0\nARC\n8\n0\n10\n0\n20\n${size()}\n40\n${size()}\n50\n${size()}\n51\n${size()}\n`,
      () =>
        `0\nLWPOLYLINE\n8\n0\n70\n1\n10\n0\n20\n0\n42\n${size()}\n10\n${size()}\n20\n0\n42\n${size()}\n`,
    ])(),
  ).join('');
  const stretch = `41\n${size()}\n42\n${size()}\n50\n${size()}\n`;
  return `0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nB\n10\n0\n20\n0\n${all}0\nENDBLK\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n${all}0\nINSERT\n8\n0\n2\nB\n10\n0\n20\n0\n${stretch}0\nENDSEC\n0\nEOF\n`;
};

/** Spoils the pairs of a DXF: codes swapped, dropped, doubled, blocks left open or in themselves, curves of any size. */
export const dxfMutation: TextMutation = (text, random) => {
  if (random.chance(0.15)) return inserts(random);
  if (random.chance(0.1)) return curves(random);
  const pairs = pairsOf(text);
  for (let n = random.below(4); n >= 0 && pairs.length > 0; n -= 1) {
    random.pick(changes)(pairs, random.below(pairs.length), random);
  }
  return pairs.map(([code, value]) => `${code}\n${value}\n`).join('');
};
