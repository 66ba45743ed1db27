import type { Flag } from '../../engine/flag.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';

/** What a list and the drawing call a flag by: its place in the layout's list, from 1. */
export const flagName = (index: number): string => `F${index + 1}`;

/** Every flag planted where it stands, with its name. */
export const drawFlags = (flags: readonly Flag[]): readonly Primitive[] =>
  flags.flatMap(({ at, level }, n): Primitive[] => [
    { kind: 'flag', at, level },
    {
      kind: 'text',
      at,
      text: flagName(n),
      size: 0.141,
      rise: 0.37,
      angle: radians(0),
      ink: level,
      weight: 'bold',
    },
  ]);
