import { loneMarks, type LoneMark } from '../../engine/walk/loneMarks.ts';
import type { Site } from '../../site/site.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { phrase } from '../../phrases/phrase.ts';

const sign = ({ mark: { x, y } }: LoneMark): Primitive => ({
  kind: 'sign',
  sign: 'mark',
  at: { x, y },
  off: 0,
});

const name = ({
  mark: { x, y, label },
  rough,
}: LoneMark): Extract<Primitive, { kind: 'text' }> => ({
  kind: 'text',
  at: { x, y },
  text: rough ? phrase`${label.trim()} (rough)` : label.trim(),
  size: 0.15,
  rise: 0.09,
  angle: radians(0),
  ink: 'survey',
  weight: 'bold',
});

/** Names of more marks than this are not led out to where there is room: the leaders would hide the plan. */
const mostLedOut = 60;

/** The marks on which nothing stands that have a name: those that a sheet speaks of. */
export const namedLoneMarks = (site: Site): LoneMark[] =>
  loneMarks(site).filter(({ mark }) => mark.label.trim() !== '');

/**
 * Every mark with a name on which nothing stands, as a small lath cross with its name; one that only
 * satellites found says that it is rough.
 */
export const drawLoneMarks = (site: Site): readonly Primitive[] => {
  const marks = namedLoneMarks(site);
  const far = marks.length > mostLedOut ? ({ far: 'leave out' } as const) : {};
  return marks.flatMap((lone) => [sign(lone), { ...name(lone), ...far }]);
};

/** The marks without a name on which nothing stands: a pad shows them, a sheet has nothing to say of them. */
export const drawNamelessMarks = (site: Site): readonly Primitive[] =>
  loneMarks(site)
    .filter(({ mark }) => mark.label.trim() === '')
    .map(sign);
