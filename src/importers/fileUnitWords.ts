import { phrase } from '../phrases/phrase.ts';
import type { FileUnit } from './fileUnit.ts';

/** What a reader calls the units that a file can be in. */
export const fileUnitWords: Readonly<Record<FileUnit, string>> = {
  feet: phrase`feet`,
  'US survey feet': phrase`US survey feet`,
  inches: phrase`inches`,
  yards: phrase`yards`,
  metres: phrase`metres`,
  centimetres: phrase`centimetres`,
  millimetres: phrase`millimetres`,
};
