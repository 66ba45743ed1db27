import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Infill } from '../../site/infill.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { plainLength } from '../../units/plainLength.ts';

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

/** What somebody called the parts of it, behind what they are. */
const called = (what: string, label: string): string =>
  label.trim() === '' ? what : `${what} (${label.trim()})`;

/** What is between the posts. */
const kind = (infill: Infill): string => {
  switch (infill.kind) {
    case 'chain link':
      return 'chain-link fence';
    case 'boards':
      return called('board fence', infill.board);
    case 'panels':
      return called('panel fence', infill.panel);
  }
};

/** What chain link has besides its posts. */
const linked = (spec: FenceSpec): string[] => [
  ...rails(spec),
  ...(spec.solid === null ? [] : ['slats or a screen']),
];

/** How boards stand on their rails. */
const onRails = (infill: Infill): string[] => {
  if (infill.kind !== 'boards') return [];
  const { rails: count, gap } = infill;
  return [`${gap > 0 ? 'spaced' : 'tight'} on ${count} ${count === 1 ? 'rail' : 'rails'}`];
};

/** What a build is, as a customer is told of it: its kind, how high it is, and what it has. */
export const buildWords = (spec: FenceSpec, system: LengthSystem): string => {
  const { infill } = spec;
  const own = [...(infill.kind === 'chain link' ? linked(spec) : []), ...barbed(spec)];
  return [
    kind(infill),
    `${plainLength(spec.fabricHeight, system)} high`,
    ...onRails(infill),
    ...(own.length === 0 ? [] : [`with ${listed(own)}`]),
  ].join(', ');
};
