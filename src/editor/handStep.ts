import type { LengthSystem } from '../units/lengthStyle.ts';

/** The steps in which a hand sets lengths, inches: whole inches, tenths of a foot, whole centimetres. */
export const handStep: Readonly<Record<LengthSystem, number>> = {
  feet: 1,
  inches: 1,
  'decimal feet': 1.2,
  mm: 1 / 2.54,
  m: 1 / 2.54,
};
