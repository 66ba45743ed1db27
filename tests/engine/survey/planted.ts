import { leastSigmas, planted, type Planted } from './plantedNetworks.ts';
import { leastRedundancy, toldYard, type ToldYard } from './plantedYard.ts';

/** What a command prints: how many of so many planted errors were named first. */
const shareOf = (all: readonly Planted[]): string => {
  const first = all.filter(({ place }) => place === 0);
  const alone = first.filter(({ together }) => together === 1);
  const share = ((100 * first.length) / all.length).toFixed(1);
  return `${first.length} of ${all.length} named first, ${share} % (${alone.length} of them alone)`;
};

const count = Number(process.argv[2] ?? 1000);
const all = Array.from({ length: count }, (_, seed) => planted(seed + 1));
const checked = all.filter(({ redundancy }) => redundancy >= 0.1);
// tied so thinly that a wrong reading often has a rival that explains as much
const thin = Array.from({ length: Math.ceil(count / 4) }, (_, seed) => planted(seed + 1, 2));
const [least, most] = [
  Math.min(...all.map(({ sigmas }) => sigmas)),
  Math.max(...all.map(({ sigmas }) => sigmas)),
];

const lines = [
  `${count} invented yards: a house of four corners or six, its sides and all its diagonals taped, and`,
  'four to eight fence corners, each tied to three house corners, with the legs of the fence taped.',
  'Every reading is off by chance as far as it is trusted (1/4 in and 1/2 in more for each 100 ft), and',
  'every mark is sketched up to 6 ft off along x and y, and',
  `one tape, any of them alike, has an error of ${leastSigmas} standard deviations or more.`,
  `Errors planted: from ${least.toFixed(1)} to ${most.toFixed(0)} standard deviations.`,
  '',
  `all, nothing left out: ${shareOf(all)}`,
  `tapes of which the others show 10 % or more: ${shareOf(checked)}`,
  ...['a foot misread', 'ten feet misread', 'digits exchanged'].map(
    (blunder) => `${blunder}: ${shareOf(all.filter((one) => one.blunder === blunder))}`,
  ),
  `fence corners tied to two house corners alone: ${shareOf(thin)}`,
];

console.log(lines.join('\n'));

const told = Array.from({ length: count }, (_, seed) => toldYard(seed));
const ofThem = (some: readonly ToldYard[]): string => {
  const share = (of: (one: ToldYard) => boolean): string => {
    const found = some.filter(of).length;
    return `${found} of ${some.length}, ${((100 * found) / some.length).toFixed(1)} %`;
  };
  const first = share((one) => one.first);
  return `named first ${first}; named first or as one that cannot be told from it ${share((one) => one.among)}`;
};

console.log(
  [
    '',
    `${count} more, with less to spare: a house whose corners are told to be square or that has its two`,
    'diagonals taped, and four to eight fence corners on two or three ties, the legs taped; readings to',
    'the eighth of an inch. Only a tape that others check can be found out.',
    '',
    `all: ${ofThem(told)}`,
    `tapes of which the others show ${(100 * leastRedundancy).toFixed(0)} % or more: ${ofThem(told.filter(({ redundancy }) => redundancy >= leastRedundancy))}`,
  ].join('\n'),
);
