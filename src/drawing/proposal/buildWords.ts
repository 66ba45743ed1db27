import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Infill } from '../../site/infill.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { plainLength } from '../../units/plainLength.ts';

const kinds: Readonly<Record<Infill['kind'], string>> = {
  'chain link': 'chain-link fence',
  boards: 'board fence',
  panels: 'panel fence',
};

/** `a`, `a and b`, `a, b and c`. */
const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

const rails = (spec: FenceSpec): string[] => {
  const own = [
    ...(spec.topRail === null ? [] : ['top']),
    ...(spec.middleRail === null ? [] : ['middle']),
    ...(spec.bottomRail === null ? [] : ['bottom']),
  ];
  return own.length === 0 ? [] : [`${listed(own)} rail${own.length === 1 ? '' : 's'}`];
};

const barbed = ({ barbedWire }: FenceSpec): string[] => {
  if (barbedWire === null) return [];
  const { strands } = barbedWire;
  return [`${strands} ${strands === 1 ? 'strand' : 'strands'} of barbed wire`];
};

/** What a build has besides its posts. */
const has = (spec: FenceSpec): string[] => [
  ...(spec.infill.kind === 'boards' ? [] : rails(spec)),
  ...(spec.solid === null ? [] : ['slats or a screen']),
  ...barbed(spec),
];

/** What a build is, as a customer is told of it: its kind, how high it is, and what it has. */
export const buildWords = (spec: FenceSpec, system: LengthSystem): string => {
  const own = has(spec);
  const what = `${kinds[spec.infill.kind]}, ${plainLength(spec.fabricHeight, system)} high`;
  return own.length === 0 ? what : `${what}, with ${listed(own)}`;
};
