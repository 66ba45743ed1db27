import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** Young's modulus of steel, pounds per square inch: from memory, AISC 360. */
export const steelModulus = 29_000_000;

/** Weight of steel, pounds per cubic inch: from memory, as in the plain-end formula of ASME B36.10M. */
export const steelWeight = 0.2836;

/** A kind of fence pipe by the stress at which it begins to yield. */
export interface PipeGrade {
  readonly label: 'regular' | 'high strength';
  /** Pounds per square inch. */
  readonly yields: number;
  readonly source: Source;
}

const grade = (label: PipeGrade['label'], yields: number, text: string): PipeGrade => ({
  label,
  yields,
  source: { text: phrase`${text}; from memory`, status: 'memory' },
});

/** The grades of fence pipe, the weakest first: what nobody has said is taken for the first. */
export const pipeGrades: readonly [PipeGrade, ...PipeGrade[]] = [
  grade('regular', 30_000, phrase`ASTM F1083 and F1043 Group IA, regular grade: 30,000 psi`),
  grade('high strength', 50_000, phrase`ASTM F1043 Group IC, high strength: 50,000 psi`),
];
