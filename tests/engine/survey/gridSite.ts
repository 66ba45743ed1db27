import { sigmaOf } from '../../../src/engine/survey/sighting.ts';
import type { MarkId, ObservationId } from '../../../src/site/ids.ts';
import type { Mark } from '../../../src/site/mark.ts';
import type { Observation } from '../../../src/site/observation.ts';
import type { Site } from '../../../src/site/site.ts';
import { usualTrusts } from '../../../src/site/trusts.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';
import { chanceOf } from './chance.ts';

/** How many marks and tapes a yard has, and by how much its 21st tape is misread, inches. */
export interface GridSize {
  readonly marks: number;
  readonly tapes: number;
  readonly misread?: number;
  /** Before the numbers of its ids, to tell two yards of one document apart. */
  readonly name?: string;
}

/**
 * A large yard: marks some 20 ft apart, each up to 5 ft off a grid, drawn up to 2'-6" off where they are,
 * and so many tapes from mark to mark, the nearest first, read with noise of their own sigmas.
 */
export const gridSite = ({ marks, tapes, misread = 0, name = '' }: GridSize): Site => {
  const chance = chanceOf(5);
  const across = Math.ceil(Math.sqrt(marks));
  const truth = Array.from({ length: marks }, (_, n) => ({
    x: 240 * (n % across) + chance.between(-60, 60),
    y: 240 * Math.floor(n / across) + chance.between(-60, 60),
  }));
  const id = (n: number): MarkId => `mark:${name}${n + 1}`;
  const apart = (a: number, b: number): number =>
    Math.hypot(truth[a]!.x - truth[b]!.x, truth[a]!.y - truth[b]!.y);
  const pairs = truth
    .flatMap((_, a) => truth.slice(a + 1).map((_other, k) => [a, a + 1 + k] as const))
    .toSorted(([a, b], [c, d]) => apart(a, b) - apart(c, d))
    .slice(0, tapes);
  const observations = pairs.map(([a, b], n): readonly [ObservationId, Observation] => {
    const exact = { from: id(a), to: id(b), length: inches(apart(a, b)), trust: null, label: '' };
    const tape = { kind: 'tape', ...exact } as const;
    const off = sigmaOf(tape, usualTrusts) * chance.normal() + (n === 20 ? misread : 0);
    return [`observation:${name}${n + 1}`, { ...tape, length: inches(tape.length + off) }];
  });
  const drawn = truth.map(({ x, y }, n): readonly [MarkId, Mark] => [
    id(n),
    { x: x + chance.between(-30, 30), y: y + chance.between(-30, 30), label: '', fixed: false },
  ]);
  return {
    ...namedSite('Grid'),
    marks: Object.fromEntries(drawn),
    observations: Object.fromEntries(observations),
  };
};
