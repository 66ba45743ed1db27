import { landLengths } from '../../units/landLengths.ts';
import { quadrantDegrees, quadrantForm } from '../../units/parseBearing.ts';
import { parseDegrees } from '../../units/parseDegrees.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import { fromDegrees, type Radians } from '../../units/radians.ts';
import type { Figure } from './figure.ts';

const quadrants = new RegExp(quadrantForm, 'g');
const mark = String.raw` ?(?:°|degrees?|deg\b\.?)`;
const minutes = String.raw`[ ,]*(?:and )?\d{1,2}(?:\.\d+)? ?(?:'|minutes?|min\b\.?)`;
const seconds = String.raw`[ ,]*(?:and )?\d{1,2}(?:\.\d+)? ?(?:"|seconds?|sec\b\.?)`;
const anyAngle = `\\d{1,3}(?:\\.\\d+| \\d{1,2}/\\d{1,2})?${mark}(?:${minutes}(?:${seconds})?)?|\\d{1,3}-\\d{1,2}-\\d{1,2}(?:\\.\\d+)?(?![\\d-])`;
const angles = new RegExp(`(?<![\\d.-])(?:${anyAngle})`, 'g');
const azimuths = new RegExp(
  `(?<![a-z])az(?:imuth)?\\b\\.?(?: (?:of|is|bearing))?[ :=]*(${anyAngle}|\\d{1,3}(?:\\.\\d+)?)`,
  'g',
);
/** What makes of a way to go another point of the compass. */
const pointed = String.raw`[ -]?(?:by|north|south|east|west)(?![a-z])`;
const due = new RegExp(`(?<![a-z])due (north|south|east|west|[nsew]\\b)(?!${pointed})`, 'g');
const unit = String.raw`(?:feet|foot|ft|'|chain|ch\b|rod|rd|perch|pole|met|m\b|yard|yd|link|lk)`;
/** What no way to go is followed by, but an angle in words. */
const numberWord =
  'zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety';
/** `north` alone where a call begins, and a length the next figure: not the north line of somebody. */
const ahead = new RegExp(
  '^[^a-z]*(?:course \\d+[^a-z]*)?(?:(?:thence|then|th\\.?),? )?(?:(?:run|go|running|going|continue|continuing) )?' +
    `(north|south|east|west)(?!${pointed})` +
    `(?![a-z-]| ?(?:line|side|half|right|edge|corner|boundary|quarter|${numberWord}))` +
    `(?=(?:(?!deg|min)[^\\d])*\\d[\\d,.]*(?: \\d+/\\d+)?(?:[- ]?${unit}|[^a-z\\d]*$))`,
  'g',
);
/** The way to go and how far, further on in a call: not the north 100 feet of somebody's lot. */
const onThen = new RegExp(
  `(?<![a-z-])(?<!the |by |range \\d+ |township \\d+ |north |south |east |west |\\d/\\d+ |\\0 ?)(north|south|east|west) (?=\\d[\\d,]*(?:\\.\\d+)?(?:[- ]?${unit}(?! of)|[^a-z\\d]*$))`,
  'g',
);
/** One letter and how far, behind `thence`. */
const letter = new RegExp(
  `(?<=(?<![a-z])(?:thence|then|th\\.?),? )([nsew])\\.? (?=\\d[\\d,.]*(?: \\d+/\\d+)?[- ]?${unit})`,
  'g',
);
const numbers = /(?<![\w.,/°'"-])(\d+(?:,\d{3})*(?:\.\d+)?)(?: (\d+)\/(\d+))?(?![\w/°]|[.,-]\d)/g;

const cardinals: Readonly<Record<string, number>> = { n: 0, e: 90, s: 180, w: 270 };

const turned = (degrees: Parsed<number>): Parsed<Radians> =>
  degrees.ok ? read(fromDegrees(degrees.value)) : degrees;

const placed = ({ index, 0: { length } }: RegExpExecArray) => ({ at: index, end: index + length });

const cardinal = (found: RegExpExecArray): Figure => {
  const degrees = cardinals[found[1]?.[0] ?? 'n'] ?? 0;
  return { ...placed(found), kind: 'bearing', azimuth: read(fromDegrees(degrees)) };
};

type Finder = readonly [form: RegExp, figure: (found: RegExpExecArray) => Figure | null];

/** In the order in which they take what they find: what one has taken no later one sees. */
const finders: readonly Finder[] = [
  [
    quadrants,
    (found) => {
      const [, from = '', angle = '', to = ''] = found;
      if (!/\d/.test(angle)) return null;
      return {
        ...placed(found),
        kind: 'bearing',
        azimuth: turned(quadrantDegrees(from, angle, to)),
      };
    },
  ],
  [
    azimuths,
    (found) => ({
      ...placed(found),
      kind: 'bearing',
      azimuth: turned(parseDegrees(found[1] ?? '')),
    }),
  ],
  [due, cardinal],
  [ahead, cardinal],
  [letter, cardinal],
  [angles, (found) => ({ ...placed(found), kind: 'angle', angle: turned(parseDegrees(found[0])) })],
  [onThen, cardinal],
];

/** A number, with its fraction where it has one. */
const valueOf = ([, whole = '', top = '0', bottom = '1']: RegExpExecArray): number =>
  Number(whole.replaceAll(',', '')) + Number(top) / Number(bottom);

/** The same length of text with what was taken left blank; the figures stand in their order. */
const without = (text: string, figures: readonly Figure[]): string => {
  let from = 0;
  const parts = figures.map(({ at, end }) => {
    const part = text.slice(from, at) + '\u0000'.repeat(end - at);
    from = end;
    return part;
  });
  return parts.join('') + text.slice(from);
};

/**
 * Every bearing, angle, length and bare number of a call in small letters and on one line, in the order
 * in which they stand. Bearings are quadrant bearings, azimuths that say that they are, and the compass.
 */
export const figuresIn = (text: string): readonly Figure[] => {
  let rest = text;
  const found: Figure[] = [];
  const take = (figures: readonly Figure[]) => {
    found.push(...figures);
    rest = without(rest, figures);
  };
  for (const [form, figure] of finders) {
    take([...rest.matchAll(form)].flatMap((match) => figure(match) ?? []));
  }
  take(landLengths(rest).map((length) => ({ ...length, kind: 'length' })));
  take(
    [...rest.matchAll(numbers)].map((match) => ({
      ...placed(match),
      kind: 'number',
      value: valueOf(match),
    })),
  );
  return found.toSorted((a, b) => a.at - b.at);
};
