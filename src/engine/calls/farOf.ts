import { farthest } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { smallLetters } from '../../units/plainDeed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { figuresOf, type Figure, type FigureOf } from './figure.ts';
import { isThingSize } from './isThingSize.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The figure that tells how far a call goes, and how far. */
export interface Far {
  readonly figure: Figure;
  readonly length: Inches;
  /** What is in doubt of it, a line each; each lacks its subject. */
  readonly doubts: readonly string[];
}

/** What may stand between a bearing and its distance. */
const bareAfter = /^[ ,:;-]*(?:(?:for )?(?:a )?(?:distance|dist\.?|length)(?: of)?[ :=]*|for )?$/;
/** What may stand after a distance without a unit: nothing that could be a unit of its own. */
const unitless =
  /^\s*(?:$|[;,(&-]|\.(?![a-z\d])|(?:to|along|at|on|by|in|from|more|with|and|thence|is|being|passing|said|the|a|an)(?![a-z])|±)/;
const total = /(?<![a-z])(?:in all|total(?:ling)?)(?![a-z])/;

/** Before a length that says where on the way something is passed. */
const passed = /(?<![a-z])(?:at|passing[^,;]*) $/;
/** After one that says how far off something is. */
const off = /^ ?(?:(?:due )?(?:north|south|east|west)[a-z]* )?(?:of|off|from)(?![a-z])/;

/** Figures with letters among them that look like figures, and a unit. */
const nearLength =
  /(?<![\w.])(?=[\d.,]{0,12}\d[\d.,]{0,12}[ol])[\dol.,]{1,24} ?(?:feet|foot|ft|chains?|links?|rods?|met|m\b|')/i;
/** A number in units that are none of `landUnits`. */
const strange =
  /(?<![\w.,/°'"-])(\d[\d,]*(?:\.\d+)? (?:arpents?|cubits?|paces?|steps?|fathoms?|leagues?|cordel(?:e?s)?|toises?|ells?|kilomet(?:er|re)s?|km|cm|mm|centimet(?:er|re)s?))(?![a-z])/i;
const below = /(?:^|\s)(-\d[\d.,]*)(?!-)/;
/** A number behind a length that nothing says the unit of: `50 ft 6`. */
const dangling = /^ \d+(?: \d+\/\d+)?(?=\s*(?:$|[;,.)]|(?:to|along|at|and)(?![a-z])))/i;

const both = phrase`expected both, such as N 26°10' E 285.10 feet`;

interface Told {
  readonly text: string;
  /** The figure that tells the way. */
  readonly from: Figure;
  readonly lengths: readonly FigureOf<'length'>[];
  readonly numbers: readonly FigureOf<'number'>[];
  /** Inches of a distance without a unit. */
  readonly bare: number;
}

const isDirect = ({ text, from }: Told, { at }: Figure): boolean =>
  at >= from.end && bareAfter.test(text.slice(from.end, at));

const sure = (figure: FigureOf<'length'> | undefined): Far | null =>
  figure === undefined ? null : { figure, length: figure.length, doubts: [] };

/** The distance that is called the total one. */
const totalOf = ({ text, lengths }: Told): Far | null => {
  const said = total.exec(text)?.index ?? -1;
  if (said < 0) return null;
  return sure(lengths.find(({ at }) => at > said && at - said < 30) ?? lengths.at(-1));
};

/** A number without a unit right behind the bearing; not one that brackets say again in a unit. */
const bareOf = (told: Told): Far | null => {
  const { text, numbers, from, lengths, bare } = told;
  const figure = numbers.find(({ at }) => at >= from.end);
  if (figure === undefined || !isDirect(told, figure)) return null;
  const rest = text.slice(figure.end);
  const again = lengths.some(({ at }) => /^ ?\($/.test(text.slice(figure.end, at)));
  if (again || !unitless.test(rest)) return null;
  return { figure, length: inches(figure.value * bare), doubts: [] };
};

/** A number without a unit that ends the call. */
const lastOf = ({ text, numbers, from, bare }: Told): Far | null => {
  const figure = numbers.findLast(({ at }) => at >= from.end);
  if (figure === undefined || /[a-z\d]/.test(text.slice(figure.end))) return null;
  if (!/^\d+\.\d+$/.test(text.slice(figure.at, figure.end))) return null;
  return { figure, length: inches(figure.value * bare), doubts: [] };
};

/** Whether a length may say where something beside the course is, and not how far the course goes. */
const isAside = (told: Told, figure: Figure): boolean =>
  !isDirect(told, figure) &&
  (passed.test(told.text.slice(0, figure.at)) || off.test(told.text.slice(figure.end)));

const doubted = (line: string, figure: FigureOf<'length'> | undefined): Far | null => {
  if (figure === undefined) return null;
  const written = quotedText(line.slice(figure.at, figure.end));
  const doubt = phrase`has no distance but ${written}, which may be how far off something is`;
  return { figure, length: figure.length, doubts: [doubt] };
};

const chosen = (line: string, told: Told): Far | null => {
  const { lengths, from } = told;
  const own = lengths.filter((one) => !isAside(told, one));
  return (
    totalOf(told) ??
    bareOf(told) ??
    sure(own.find(({ at }) => at >= from.end)) ??
    lastOf(told) ??
    sure(own[0]) ??
    doubted(line, lengths.find(({ at }) => at >= from.end) ?? lengths[0])
  );
};

/** Why a call without a distance has none. */
const missing = (line: string, sizes: readonly Figure[]): string => {
  const other = strange.exec(line)?.[1];
  if (other !== undefined)
    return phrase`${quotedText(other)} is in no unit that is read: expected feet, chains, rods, metres or the like`;
  const [size] = sizes;
  if (size === undefined) return phrase`has a bearing and no distance: ${both}`;
  const written = quotedText(line.slice(size.at, size.end));
  return phrase`has a bearing and no distance, ${written} is the size of something: ${both}`;
};

/** Why the distance of a call is none that a side of a lot could have; null where it is. */
const faultOf = (line: string, { figure, length }: Far): string | null => {
  const more = figure.kind === 'length' ? dangling.exec(line.slice(figure.end))?.[0] : undefined;
  if (more !== undefined) {
    const written = line.slice(figure.at, figure.end + more.length);
    return phrase`${quotedText(written)} ends without its unit: expected such as 50 ft 6 in`;
  }
  if (length <= 0) return phrase`has a distance of nothing: expected one above zero`;
  return length > farthest
    ? phrase`has a distance of over ten miles: expected a side of a lot`
    : null;
};

/**
 * How far a straight call goes: the distance that is called the total one, else the one right behind its
 * bearing, else the first that is neither the size of a thing nor how far off one is. `from` is the figure
 * that tells the way, `bare` the inches of a distance without a unit. A reason without its subject where
 * there is none.
 */
export const farOf = (
  line: string,
  figures: readonly Figure[],
  { from, bare }: Pick<Told, 'from' | 'bare'>,
): Parsed<Far> => {
  const text = smallLetters(line);
  const minus = below.exec(line)?.[1];
  if (minus !== undefined)
    return unread(phrase`${quotedText(minus)} is below zero: expected a distance above it`);
  const wrong = nearLength.exec(line)?.[0];
  if (wrong !== undefined)
    return unread(phrase`${quotedText(wrong)} is not a distance: expected figures`);
  const all = figuresOf(figures, 'length');
  const lengths = all.filter((one) => !isThingSize(text, one));
  const far = chosen(line, { text, from, lengths, bare, numbers: figuresOf(figures, 'number') });
  if (far === null) return unread(missing(line, all));
  const fault = faultOf(line, far);
  return fault === null ? read(far) : unread(fault);
};
