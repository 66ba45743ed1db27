import { arcOf } from '../../geometry/track.ts';
import { isWoven } from '../../site/isWoven.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import { curveSpacing } from '../../trade/curveSpacing.ts';
import { inches } from '../../units/inches.ts';
import type { Course } from './course.ts';

const onCurve = ({ legs }: Course, spec: FenceSpec): FenceSpec => {
  const [leg] = legs;
  const arc = leg === undefined ? null : arcOf(leg);
  if (arc === null || spec.onCurves === 'as straight') return spec;
  const maxBay = inches(Math.min(spec.maxBay, curveSpacing(inches(arc.radius))));
  return { ...spec, maxBay };
};

/** Only fabric is stretched: nothing else needs posts to stretch it from. */
const unstretched = (spec: FenceSpec): FenceSpec =>
  isWoven(spec) ? spec : { ...spec, pullInterval: null, pullGrade: null };

/**
 * What a course is built to: on a curve with bays as short as its radius asks for, and with pull posts only
 * where it has fabric.
 */
export const specOn = (course: Course, spec: FenceSpec): FenceSpec =>
  unstretched(onCurve(course, spec));
