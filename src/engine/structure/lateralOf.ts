import type { Conditions } from '../../site/conditions.ts';
import { isolatedPoles, soils, weakestSoil, type Soil } from '../../trade/soils.ts';

/** The class of the ground: the weakest of the table where nobody has said. */
export const soilOf = ({ soil }: Pick<Conditions, 'soil'>): Soil =>
  soils.find(({ name }) => name === soil) ?? weakestSoil;

/**
 * The lateral bearing of the ground of a place, pounds per square foot for each foot of depth, with what is
 * allowed for isolated poles.
 */
export const lateralOf = (ground: Pick<Conditions, 'soil' | 'isolated'>): number =>
  soilOf(ground).lateral * (ground.isolated ? isolatedPoles.factor : 1);
