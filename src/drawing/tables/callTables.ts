import type { CallCurve, Course } from '../../engine/calls/course.ts';
import type { Traverse } from '../../engine/calls/traverse.ts';
import { formatBearing } from '../../units/formatBearing.ts';
import { formatDegrees } from '../../units/formatDegrees.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Table } from './table.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';
import { sideWords } from './sideWords.ts';

const left = (heading: string, share: number) => ({ heading, align: 'left', share }) as const;
const right = (heading: string, share: number) => ({ heading, align: 'right', share }) as const;

const curveCell = (curve: CallCurve | null, style: LengthStyle): string => {
  if (curve === null) return '';
  const { side, radius, delta, arc } = curve;
  const [wide, long] = [formatLength(radius, style), formatLength(arc, style)];
  return phrase`${sideWords[side]}, radius ${wide}, ${formatDegrees(delta)}, arc ${long}`;
};

/** Courses as they were read; a curve by its chord, with its measures beside it. */
export const courseTable = (
  courses: readonly Course[],
  { title, style }: { readonly title: string; readonly style: LengthStyle },
): Table => ({
  title,
  columns: [
    right(phrase`No.`, 1),
    left(phrase`Bearing`, 3),
    right(phrase`Distance`, 2),
    left(phrase`Curve, by its chord`, 5),
    left(phraseOf('mark')`To`, 4),
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
  title: phrase`Balanced by the compass rule`,
  columns: [
    right(phrase`No.`, 1),
    right(phrase`Latitude`, 2),
    right(phrase`Departure`, 2),
    right(phrase`Lat. corr.`, 2),
    right(phrase`Dep. corr.`, 2),
    left(phrase`Balanced bearing`, 3),
    right(phrase`Distance`, 2),
    right(phrase`DMD`, 2),
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
