import type { Inches } from '../../units/inches.ts';
import { planAt } from '../ground/gradeLine.ts';
import type { Run } from '../layout.ts';

/** How far in plan a station of a run, which is measured along the grade, is from its start; inches. */
export const stationInPlan = ({ ground }: Pick<Run, 'ground'>, station: Inches): Inches =>
  ground === null ? station : planAt(ground.grade, station);
