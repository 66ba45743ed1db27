import type { GateLayout } from '../../engine/layout.ts';
import type { Gate } from '../../site/gate.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { plainLength } from '../../units/plainLength.ts';
import { gateKind } from '../tables/gateKind.ts';

const routes: Readonly<Record<NonNullable<Gate['route']>, string>> = {
  accessible: 'meant for people in wheelchairs to pass',
  fire: 'meant for fire engines to pass',
};

const leafWords = (gate: GateLayout): string[] => {
  const leaves = gate.opening.terms.filter(({ role }) => role === 'leaf').length;
  return leaves === 0 ? [] : [leaves === 1 ? 'one leaf' : 'two leaves'];
};

/** The opening of a gate as it is sold, or where nobody said about how wide it is to be. */
export const openingWords = (
  { opening }: Pick<GateLayout, 'opening'>,
  gate: Pick<Gate, 'nominal'> | undefined,
  system: LengthSystem,
): string => {
  const nominal = gate?.nominal ?? null;
  return nominal === null
    ? `opening about ${plainLength(opening.target, system)}`
    : `${plainLength(nominal, system)} opening`;
};

/** What a gate is, as a customer is told of it: kind, opening, leaves, what it is for and what moves it. */
export const gateWords = (
  layout: GateLayout,
  gate: Gate | undefined,
  system: LengthSystem,
): string => {
  const kind = gateKind(layout);
  const route = gate?.route ?? null;
  return [
    kind.startsWith('gap') ? kind : kind.replace(/^(single|double) (swing|cantilever)/, '$& gate'),
    openingWords(layout, gate, system),
    ...leafWords(layout),
    ...(route === null ? [] : [routes[route]]),
    ...(gate?.closer === null || gate === undefined ? [] : ['closes by itself']),
    ...(gate?.powered === true ? ['for a motor, which is not included'] : []),
    ...(layout.placed ? [] : ['does not fit yet where it is drawn']),
  ].join(', ');
};
