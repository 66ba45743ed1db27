import type { Leg, Run } from '../../../engine/layout.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { slack } from '../../../geometry/tolerance.ts';
import { arcOf } from '../../../geometry/track.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import type { Site } from '../../../site/site.ts';
import { baySpacings } from '../../../trade/baySpacings.ts';
import { curveSpacing, curveSpacingSource } from '../../../trade/curveSpacing.ts';
import { maxSpacing } from '../../../trade/spacing.ts';
import { windSource } from '../../../trade/windTerms.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import { ofTheBuild, practice, publishedOf, workedOut, type Reason } from './reason.ts';

const mostReason = ({ infill, maxBay }: FenceSpec, { lengths }: Site): Reason =>
  infill.kind === 'panels'
    ? {
        says: phrase`Bays are as wide as the panels of this build.`,
        source: ofTheBuild,
      }
    : {
        says: phrase`No bay is longer than ${formatLength(maxBay, lengths)}, from centre to centre.`,
        source: publishedOf(baySpacings, ({ length }) => length === maxBay),
      };

const curveReasons = (leg: Leg, spec: FenceSpec, { lengths }: Site): Reason[] => {
  const arc = arcOf(leg);
  if (arc === null || spec.onCurves === 'as straight') return [];
  const radius = inches(arc.radius);
  return [
    {
      says: phrase`On a radius of ${formatLength(radius, lengths)} no bay is longer than ${formatLength(curveSpacing(radius), lengths)}.`,
      source: curveSpacingSource.text,
    },
  ];
};

const windReasons = ({ conditions: { bays, wind, ice } }: Site): Reason[] =>
  bays === 'by build' || (wind === null && ice === null)
    ? []
    : [
        {
          says: phrase`No bay is longer than the line posts of this build bear in the wind of this place.`,
          source: windSource.text,
        },
      ];

const evenReasons = (runs: readonly Run[]): Reason[] => {
  const lengths = runs.flatMap(({ spaces }) =>
    spaces.flatMap((space) => (space.kind === 'bay' ? [space.length] : [])),
  );
  const alike = Math.max(...lengths) - Math.min(...lengths) <= slack;
  const even: Reason = {
    says: phrase`Each stretch is divided into the fewest bays that keep to that, as alike as can be.`,
    source: maxSpacing.source.text,
  };
  if (alike) return [even];
  const other: Reason = {
    says: phrase`Bays differ from stretch to stretch, and where a post is held or kept off ground where no hole may be dug.`,
    source: workedOut,
  };
  return [even, other];
};

const slopeReasons = (runs: readonly Run[]): Reason[] =>
  runs.every(({ ground }) => ground === null)
    ? []
    : [
        {
          says: phrase`Bays are measured along the grade and not level.`,
          source: maxSpacing.source.text,
        },
      ];

/** Why the bays of a leg come out as they do. None where nothing is built on it. */
export const bayReasons = (leg: Leg, runs: readonly Run[], site: Site): readonly Reason[] => {
  const own = runs.filter((run) => run.legs.includes(leg.id));
  const [first] = own;
  const spec =
    first === undefined ? undefined : site.specs[site.lines[first.line]?.spec ?? 'spec:'];
  if (spec === undefined) return [];
  return [
    mostReason(spec, site),
    ...curveReasons(leg, spec, site),
    ...windReasons(site),
    ...evenReasons(own),
    ...slopeReasons(own),
    {
      says: phrase`Lengths on paper are differences of tape readings, so that every chain adds up.`,
      source: practice,
    },
  ];
};
