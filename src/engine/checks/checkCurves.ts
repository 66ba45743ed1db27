import { arcOf } from '../../geometry/track.ts';
import type { Site } from '../../site/site.ts';
import { formatAngle } from '../../units/formatAngle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import type { Flag } from '../flag.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { SeatedCourse } from '../posts/seatLines.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A turn that is over by less than this is not told: no sheet shows it. */
const told = 1e-6;

const isCurved = ({ course: { bow } }: SeatedCourse): boolean => bow !== 0;

/** Curves on which the fabric turns at every line post by more than its spec's corner angle. */
export const checkCurves = (site: Site, laid: LaidLines): Flag[] =>
  laid.seated.filter(isCurved).flatMap(({ course, spec }): Flag[] => {
    const arc = arcOf({ start: course.from.at, end: course.to.at, bow: course.bow });
    const id = `run:${course.key}`;
    const run = laid.lines[course.chain.id]?.runs.find((each) => each.id === id);
    if (arc === null || run === undefined) return [];
    const lengths = run.spaces.flatMap(({ kind, length }) => (kind === 'bay' ? [length] : []));
    const turn = Math.max(0, ...lengths) / arc.radius;
    if (lengths.length < 2 || turn <= spec.cornerAngle + told) return [];
    const radius = formatLength(inches(arc.radius), site.lengths);
    return [
      {
        level: 'settle',
        rule: 'curve too tight',
        place: { kind: 'leg', line: course.chain.id, id: run.legs[0] ?? 'vertex:' },
        at: course.from.at,
        message: phrase`${lineName(site, course.chain.id)}: on a radius of ${radius} the fence turns by ${formatAngle(radians(turn))} at a line post: expected ${formatAngle(spec.cornerAngle)} at most; shorter bays, a larger radius, or corner posts.`,
      },
    ];
  });
