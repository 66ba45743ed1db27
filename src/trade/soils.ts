import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** What ground bears, by the classes of the building code. */
export interface Soil {
  /** One word or two for choosing it by. */
  readonly name: 'bedrock' | 'soft rock' | 'gravel' | 'sand' | 'clay';
  readonly label: string;
  /** Upright, pounds per square foot. */
  readonly bearing: number;
  /** Sideways, pounds per square foot for each foot below grade. */
  readonly lateral: number;
  readonly source: Source;
}

const table: Source = { text: 'IBC 2012 Table 1806.2', status: 'published' };

const rows = [
  ['bedrock', phrase`crystalline bedrock`, 12_000, 1_200],
  ['soft rock', phrase`sedimentary and foliated rock`, 4_000, 400],
  ['gravel', phrase`sandy gravel and gravel (GW, GP)`, 3_000, 200],
  ['sand', phrase`sand, silty or clayey sand, silty or clayey gravel`, 2_000, 150],
  ['clay', phrase`clay, sandy or silty clay, clayey silt, silt`, 1_500, 100],
] as const;

/** The whole table, the strongest first. What the ground is, is for a person to say who saw it. */
export const soils: readonly Soil[] = rows.map(([name, label, bearing, lateral]) => ({
  name,
  label,
  bearing,
  lateral,
  source: table,
}));

/** The weakest class of the table: what is taken where nobody has said what the ground is. */
export const weakestSoil: Soil = soils.reduce((least, one) =>
  one.lateral < least.lateral ? one : least,
);

/** By how much the lateral figures may be raised, and when: for loads that pass, as wind does, not for a weight that stays. */
export const isolatedPoles = {
  factor: 2,
  source: {
    text: phrase`IBC 1806.3.4: twice the lateral figures for isolated poles that 1/2 in of movement at grade does not harm; under short-term loads alone, from memory`,
    status: 'published',
  } satisfies Source,
};
