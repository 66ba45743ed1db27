import { read, unread, type Parsed } from '../../units/parsed.ts';
import { smallLetters } from '../../units/plainDeed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { Radians } from '../../units/radians.ts';
import { figuresOf, type Figure } from './figure.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The figure that tells which way a call goes, and the way clockwise from north. */
export interface Way {
  readonly figure: Figure;
  readonly azimuth: Radians;
}

const near =
  /(?<![a-z0-9])(?:north|south|n|s)\.?(?![a-z])[^;]{0,30}?\d[^;]{0,20}?(?<![a-z])(?:east|west|e|w)(?![a-z])/;
const half =
  /(?<![a-z0-9])(?:north|south|n|s)\.? ?\d{1,3}(?: ?°|[ -]\d)[^;a-z]{0,20}|^[^a-z]*[ns]\.? ?\d[\d.]*/;
const turns = /(?<![a-z])(?:deflect|turn|angle|(?:left|right)(?![a-z]| of way))/;
/** East or west right behind an angle, or before it: a bearing without its north or south. */
const westward = /^ ?(?:east|west|e|w)(?![a-z0-9])/;
/** What the bearing of a side is not followed by. */
const twice = /^[ ,]*(?:east|west|[ew])(?![a-z'])(?!\.? (?:line|side))/;
const westFirst = /(?<![a-z0-9])(?:east|west|e|w)\.? ?$/;

const bearing = phrase`expected a bearing such as N 26°10'30" E`;

/** What looks like a bearing and is none, as it is written; null where there is nothing of it. */
const nearBearing = (line: string): string | null => {
  const text = smallLetters(line);
  const found = near.exec(text) ?? half.exec(text);
  if (found === null) return null;
  const written = quotedText(line.slice(found.index, found.index + found[0].length));
  return near.test(text)
    ? phrase`${written} is not a bearing: ${bearing}`
    : phrase`${written} has no east or west: ${bearing}`;
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
  return phrase`${quotedText(written.trim())} has no north or south: ${bearing}`;
};

/**
 * The way that a straight call goes: its first bearing, else an angle that is an azimuth from north. Null
 * where it has neither; a reason without its subject where one is half told, told twice or turned.
 */
export const wayOf = (line: string, figures: readonly Figure[]): Parsed<Way> | null => {
  const [figure] = figuresOf(figures, 'bearing');
  const wrong = nearBearing(line.slice(0, figure?.at));
  if (wrong !== null) return unread(wrong);
  if (figure !== undefined && twice.test(smallLetters(line).slice(figure.end))) {
    return unread(phrase`names its way twice: ${bearing}`);
  }
  if (figure?.azimuth.ok === true) return read({ figure, azimuth: figure.azimuth.value });
  const [angle] = figuresOf(figures, 'angle');
  if (angle !== undefined && turns.test(smallLetters(line))) {
    return unread(phrase`tells an angle that is turned from the course before: ${bearing}`);
  }
  if (angle?.angle.ok !== true) return null;
  const wayless = halfBearing(line, angle);
  return wayless === null ? read({ figure: angle, azimuth: angle.angle.value }) : unread(wayless);
};
