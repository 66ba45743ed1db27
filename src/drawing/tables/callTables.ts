import type { CallCurve, Course } from '../../engine/calls/course.ts';
import type { Traverse } from '../../engine/calls/traverse.ts';
import { formatBearing } from '../../units/formatBearing.ts';
import { formatDegrees } from '../../units/formatDegrees.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Table } from './table.ts';

const left = (heading: string, share: number) => ({ heading, align: 'left', share }) as const;
const right = (heading: string, share: number) => ({ heading, align: 'right', share }) as const;

const curveCell = (curve: CallCurve | null, style: LengthStyle): string => {
  if (curve === null) return '';
  const { side, radius, delta, arc } = curve;
  return `${side}, radius ${formatLength(radius, style)}, ${formatDegrees(delta)}, arc ${formatLength(arc, style)}`;
};

/** Courses as they were read; a curve by its chord, with its measures beside it. */
export const courseTable = (
  courses: readonly Course[],
  { title, style }: { readonly title: string; readonly style: LengthStyle },
): Table => ({
  title,
  columns: [
    right('No.', 1),
    left('Bearing', 3),
    right('Distance', 2),
    left('Curve, by its chord', 5),
    left('To', 4),
  ],
  rows: courses.map(({ azimuth, length, curve, to }, n) => [
    `${n + 1}`,
    formatBearing(azimuth),
    formatLength(length, style),
    curveCell(curve, style),
    to,
  ]),
});

/** How the courses were balanced, with the double meridian distances of their area; no rows while open. */
export const balanceTable = ({ courses, lot }: Traverse, style: LengthStyle): Table => ({
  title: 'Balanced by the compass rule',
  columns: [
    right('No.', 1),
    right('Latitude', 2),
    right('Departure', 2),
    right('Lat. corr.', 2),
    right('Dep. corr.', 2),
    left('Balanced bearing', 3),
    right('Distance', 2),
    right('DMD', 2),
  ],
  rows: (lot?.courses ?? []).map(({ correction, azimuth, length, dmd }, n) => {
    const write = (of: number | undefined): string => formatLength(inches(of ?? 0), style);
    const told = courses[n];
    return [
      `${n + 1}`,
      write(told?.lat),
      write(told?.dep),
      write(correction.lat),
      write(correction.dep),
      formatBearing(azimuth),
      write(length),
      write(dmd),
    ];
  }),
});
