import type { GateLayout } from '../../engine/layout.ts';
import type { Gate } from '../../site/gate.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { plainLength } from '../../units/plainLength.ts';
import { gateKindOf, type GateKind } from '../tables/gateKind.ts';
import { phrase } from '../../phrases/phrase.ts';

const kindWords: Readonly<Record<GateKind, string>> = {
  gap: phrase`gap without a gate`,
  'single cantilever': phrase`single cantilever gate`,
  'double cantilever': phrase`double cantilever gate`,
  'centre stop': phrase`double swing gate on a centre stop`,
  'single swing': phrase`single swing gate`,
  'double swing': phrase`double swing gate`,
};

const routes: Readonly<Record<NonNullable<Gate['route']>, string>> = {
  accessible: phrase`meant for people in wheelchairs to pass`,
  fire: phrase`meant for fire engines to pass`,
};

const leafWords = (gate: GateLayout): string[] => {
  const leaves = gate.opening.terms.filter(({ role }) => role === 'leaf').length;
  return leaves === 0 ? [] : [leaves === 1 ? phrase`one leaf` : phrase`two leaves`];
};

/** The opening of a gate as it is sold, or where nobody said about how wide it is to be. */
export const openingWords = (
  { opening }: Pick<GateLayout, 'opening'>,
  gate: Pick<Gate, 'nominal'> | undefined,
  system: LengthSystem,
): string => {
  const nominal = gate?.nominal ?? null;
  return nominal === null
    ? phrase`opening about ${plainLength(opening.target, system)}`
    : phrase`${plainLength(nominal, system)} opening`;
};

/** What a gate is, as a customer is told of it: kind, opening, leaves, what it is for and what moves it. */
export const gateWords = (
  layout: GateLayout,
  gate: Gate | undefined,
  system: LengthSystem,
): string => {
  const route = gate?.route ?? null;
  return [
    kindWords[gateKindOf(layout)],
    openingWords(layout, gate, system),
    ...leafWords(layout),
    ...(route === null ? [] : [routes[route]]),
    ...(gate?.closer === null || gate === undefined ? [] : [phrase`closes by itself`]),
    ...(gate?.powered === true ? [phrase`for a motor, which is not included`] : []),
    ...(layout.placed ? [] : [phrase`does not fit yet where it is drawn`]),
  ].join(', ');
};
