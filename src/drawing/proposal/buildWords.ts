import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Infill } from '../../site/infill.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { plainLength } from '../../units/plainLength.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** `a`, `a and b`, `a, b and c`. */
const listed = (words: readonly string[]): string =>
  words.length < 2
    ? words.join('')
    : phrase`${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

const rails = (spec: FenceSpec): string[] => {
  const own = [
    ...(spec.topRail === null ? [] : [phraseOf('rail')`top`]),
    ...(spec.middleRail === null ? [] : [phraseOf('rail')`middle`]),
    ...(spec.bottomRail === null ? [] : [phraseOf('rail')`bottom`]),
  ];
  return own.length === 0
    ? []
    : [
        own.length === 1
          ? phraseOf('build')`${listed(own)} rail`
          : phraseOf('build')`${listed(own)} rails`,
      ];
};

const barbed = ({ barbedWire }: FenceSpec): string[] => {
  if (barbedWire === null) return [];
  const { strands } = barbedWire;
  return [
    strands === 1 ? phrase`1 strand of barbed wire` : phrase`${strands} strands of barbed wire`,
  ];
};

/** What somebody called the parts of it, behind what they are. */
const called = (what: string, label: string): string =>
  label.trim() === '' ? what : `${what} (${label.trim()})`;

/** What is between the posts. */
const kind = (infill: Infill): string => {
  switch (infill.kind) {
    case 'chain link':
      return phrase`chain-link fence`;
    case 'boards':
      return called(phrase`board fence`, infill.board);
    case 'panels':
      return called(phrase`panel fence`, infill.panel);
  }
};

/** What chain link has besides its posts. */
const linked = (spec: FenceSpec): string[] => [
  ...rails(spec),
  ...(spec.solid === null ? [] : [phrase`slats or a screen`]),
];

/** How boards stand on their rails. */
const onRails = (infill: Infill): string[] => {
  if (infill.kind !== 'boards') return [];
  const { rails: count, gap } = infill;
  if (gap > 0) return [count === 1 ? phrase`spaced on 1 rail` : phrase`spaced on ${count} rails`];
  return [count === 1 ? phrase`tight on 1 rail` : phrase`tight on ${count} rails`];
};

/** What a build is, as a customer is told of it: its kind, how high it is, and what it has. */
export const buildWords = (spec: FenceSpec, system: LengthSystem): string => {
  const { infill } = spec;
  const own = [...(infill.kind === 'chain link' ? linked(spec) : []), ...barbed(spec)];
  return [
    kind(infill),
    phrase`${plainLength(spec.fabricHeight, system)} high`,
    ...onRails(infill),
    ...(own.length === 0 ? [] : [phrase`with ${listed(own)}`]),
  ].join(', ');
};
