import { farthest } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { smallLetters } from '../../units/plainDeed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { Radians } from '../../units/radians.ts';
import type { Call } from './call.ts';
import { curveAhead } from './curveAhead.ts';
import { curveTold } from './curveTold.ts';
import { figuresOf, type Figure, type FigureOf } from './figure.ts';

/** What may stand between a bearing and a distance without a unit. */
const bareAfter = /^[ ,:;-]*(?:(?:for )?(?:a )?(?:distance|dist\.?|length)(?: of)?[ :=]*|for )?$/;
/** What may stand after it: nothing that could be a unit of its own. */
const unitless =
  /^\s*(?:$|[;,(&-]|\.(?![a-z\d])|(?:to|along|at|on|by|in|from|more|with|and|thence|is|being|passing|said|the|a|an)(?![a-z])|±)/;
const total = /(?<![a-z])(?:in all|total(?:ling)?)(?![a-z])/;
const near =
  /(?<![a-z0-9])(?:north|south|n|s)\.?(?![a-z])[^;]{0,30}?\d[^;]{0,20}?(?<![a-z])(?:east|west|e|w)(?![a-z])/;
const half =
  /(?<![a-z0-9])(?:north|south|n|s)\.? ?\d{1,3}(?: ?°|[ -]\d)[^;a-z]{0,20}|^[^a-z]*[ns]\.? ?\d[\d.]*/;
const turns = /(?<![a-z])(?:deflect|turn|angle|(?:left|right)(?![a-z]| of way))/;
const point = String.raw`(?:north|south|east|west)[a-z]*`;
const vague = new RegExp(
  String.raw`(?<![a-z])(?:${point}(?:[ -](?:by )?${point})*|[ns] by [ew]|[ew] by [ns]|[ns]?[ns][ew]|[ew][ns][ew])(?![a-z])`,
);

/** Figures with letters among them that look like figures, and a unit. */
const nearLength =
  /(?<![\w.])(?=[\d.,]*\d[\d.,]*[ol])[\dol.,]+ ?(?:feet|foot|ft|chains?|links?|rods?|met|m\b|')/i;

/** East or west right behind an angle, or before it: a bearing without its north or south. */
const westward = /^ ?(?:east|west|e|w)(?![a-z0-9])/;
/** What the bearing of a side is not followed by. */
const twice = /^[ ,]*(?:east|west|[ew])(?![a-z'])(?!\.? (?:line|side))/;
const westFirst = /(?<![a-z0-9])(?:east|west|e|w)\.? ?$/;

/** A number in units that are none of `landUnits`. */
const strange =
  /(?<![\w.,/°'"-])(\d[\d,]*(?:\.\d+)? (?:arpents?|cubits?|paces?|steps?|fathoms?|leagues?|cordel(?:e?s)?|toises?|ells?|kilomet(?:er|re)s?|km|cm|mm|centimet(?:er|re)s?))(?![a-z])/i;

const both = `expected both, such as N 26°10' E 285.10 feet`;
const bearing = `expected a bearing such as N 26°10'30" E`;

/** A figure with the value that the call takes from it. */
interface Taken<Value> {
  readonly figure: Figure;
  readonly value: Value;
}

/** What looks like a bearing and is none, as it is written; null where there is nothing of it. */
const nearBearing = (line: string): string | null => {
  const text = smallLetters(line);
  const found = near.exec(text) ?? half.exec(text);
  if (found === null) return null;
  const written = quotedText(line.slice(found.index, found.index + found[0].length));
  return near.test(text)
    ? `${written} is not a bearing: ${bearing}`
    : `${written} has no east or west: ${bearing}`;
};

/** Why an angle is no azimuth but half a bearing; null where nothing says so. */
const halfBearing = (line: string, { at, end }: Figure): string | null => {
  const text = smallLetters(line);
  const [after = '', before = ''] = [
    westward.exec(text.slice(end))?.[0],
    westFirst.exec(text.slice(0, at))?.[0],
  ];
  if (after === '' && before === '') return null;
  const written = line.slice(at - before.length, end + after.length);
  return `${quotedText(written.trim())} has no north or south: ${bearing}`;
};

const azimuthOf = (line: string, figures: readonly Figure[]): Parsed<Taken<Radians>> | null => {
  const [figure] = figuresOf(figures, 'bearing');
  const wrong = nearBearing(line.slice(0, figure?.at));
  if (wrong !== null) return unread(wrong);
  if (figure !== undefined && twice.test(smallLetters(line).slice(figure.end))) {
    return unread(`names its way twice: ${bearing}`);
  }
  if (figure?.azimuth.ok === true) return read({ figure, value: figure.azimuth.value });
  const [angle] = figuresOf(figures, 'angle');
  if (angle !== undefined && turns.test(smallLetters(line))) {
    return unread(`tells an angle that is turned from the course before: ${bearing}`);
  }
  if (angle?.angle.ok !== true) return null;
  const wayless = halfBearing(line, angle);
  return wayless === null ? read({ figure: angle, value: angle.angle.value }) : unread(wayless);
};

/** Of several distances that which is called the total one, else the first after the bearing. */
const chosen = (
  text: string,
  lengths: readonly FigureOf<'length'>[],
  from: Figure,
): FigureOf<'length'> | undefined => {
  const said = total.exec(text)?.index ?? -1;
  const whole =
    said < 0
      ? undefined
      : (lengths.find(({ at }) => at > said && at - said < 30) ?? lengths.at(-1));
  return whole ?? lengths.find(({ at }) => at >= from.end);
};

/** Before a length that is the size of something: `a 20' alley`. */
const sized = /(?<![a-z])(?:an?|said|that|this|existing) $/;
/** After one: what it is the size of. */
const sizeOf =
  /^[ -]*(?:(?:wide|high|tall|public|private|utility|drainage|access|iron|steel|paved|gravel|platted) ?){0,3}(?:wide|width|high|tall|alley|street|road|lane|drive|avenue|highway|easement|right[- ]of[- ]way|r\/?w(?![a-z])|fence|wall|strip|walk|sidewalk|setback|pipe|pin|stake|tree|ditch|creek)/;

/** Whether a length is of a thing that stands or runs along the course, and not the way to go. */
const isOfThing = (text: string, { at, end }: Figure): boolean =>
  sized.test(text.slice(0, at)) || sizeOf.test(text.slice(end));

/** Whether a number without a unit is the distance: right behind the bearing, or the last of the call. */
const isFar = (text: string, from: Figure, number: FigureOf<'number'>): boolean => {
  const [between, after] = [text.slice(from.end, number.at), text.slice(number.end)];
  if (bareAfter.test(between)) return unitless.test(after);
  return /^\d+\.\d+$/.test(text.slice(number.at, number.end)) && /^[^a-z\d]*$/.test(after);
};

const lengthOf = (
  text: string,
  figures: readonly Figure[],
  { from, bare }: { readonly from: Figure; readonly bare: number },
): Taken<Inches> | null => {
  const lengths = figuresOf(figures, 'length').filter((one) => !isOfThing(text, one));
  const length = chosen(text, lengths, from);
  if (length !== undefined) return { figure: length, value: length.length };
  const number = figuresOf(figures, 'number').find(({ at }) => at >= from.end);
  if (number !== undefined && isFar(text, from, number))
    return { figure: number, value: inches(number.value * bare) };
  const [first] = lengths;
  return first === undefined ? null : { figure: first, value: first.length };
};

/** Why a call has no distance, or none that a side of a lot could have; null where it has one. */
const farFault = (line: string, far: Taken<Inches> | null): string | null => {
  const below = /(?:^|\s)(-\d[\d.,]*)(?!-)/.exec(line)?.[1];
  if (below !== undefined)
    return `${quotedText(below)} is below zero: expected a distance above it`;
  const wrong = nearLength.exec(line)?.[0];
  if (wrong !== undefined) return `${quotedText(wrong)} is not a distance: expected figures`;
  if (far === null) {
    const other = strange.exec(line)?.[1];
    return other === undefined
      ? `has a bearing and no distance: ${both}`
      : `${quotedText(other)} is in no unit that is read: expected feet, chains, rods, metres or the like`;
  }
  if (far.value <= 0) return 'has a distance of nothing: expected one above zero';
  return far.value > farthest ? 'has a distance of over ten miles: expected a side of a lot' : null;
};

/** A call without a bearing: nothing at all, or a distance alone. */
const pathless = (text: string, figures: readonly Figure[]): Parsed<null> => {
  const number = /^[^a-z]*\d[^a-z]*$/.test(text.replace(vague, ''));
  if (figuresOf(figures, 'length').length === 0 && !number) return read(null);
  const word = vague.exec(text)?.[0];
  const says = word === undefined ? '' : `, ${quotedText(word)} is no angle`;
  return unread(`has a distance and no bearing${says}: ${both}`);
};

const blankTo = (text: string, place: number): string => '\u0000'.repeat(place) + text.slice(place);

const past = (figures: readonly Figure[], place: number): readonly Figure[] =>
  figures.filter(({ at }) => at >= place);

/** What a call has that was not needed, up to where it speaks of the curve after it. */
const restOf = (figures: readonly Figure[], used: readonly Figure[], to: number) =>
  figures.filter((one) => !used.includes(one) && one.kind !== 'number' && one.at < to);

/**
 * Reads a straight call by its figures: a bearing and a distance, in either order. `bare` is the inches of
 * a distance without a unit, which has to follow its bearing. Null where neither is in it; a reason
 * without its subject where one is and the other is not.
 */
export const readStraight = (
  line: string,
  figures: readonly Figure[],
  bare: number,
): Parsed<Call | null> => {
  const text = smallLetters(line);
  const way = azimuthOf(line, figures);
  if (way?.ok === false) return way;
  if (way === null) return pathless(text, figures);
  const { figure: from, value: azimuth } = way.value;
  const far = lengthOf(text, figures, { from, bare });
  const fault = farFault(line, far);
  if (far === null || fault !== null) return unread(fault ?? both);
  const end = Math.max(from.end, far.figure.end);
  const ahead = curveAhead(text, end);
  const place = ahead ?? text.length;
  const curve = ahead === null ? null : curveTold(blankTo(text, place), past(figures, place), bare);
  const rest = [...restOf(figures, [from, far.figure], place), ...(curve?.unused ?? [])];
  const unused = rest.map((one) => line.slice(one.at, one.end));
  return read({
    kind: 'straight',
    azimuth,
    length: far.value,
    next: curve?.told ?? null,
    unused,
    end,
  });
};
