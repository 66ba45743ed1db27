import { read, unread, type Parsed } from '../../units/parsed.ts';
import { smallLetters } from '../../units/plainDeed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { Call } from './call.ts';
import { curveAhead } from './curveAhead.ts';
import { curveTold } from './curveTold.ts';
import { farOf } from './farOf.ts';
import { figuresOf, type Figure } from './figure.ts';
import { wayOf } from './wayOf.ts';
import { phrase } from '../../phrases/phrase.ts';

const point = String.raw`(?:north|south|east|west)[a-z]*`;
const vague = new RegExp(
  String.raw`(?<![a-z])(?:${point}(?:[ -](?:by )?${point})*|[ns] by [ew]|[ew] by [ns]|[ns]?[ns][ew]|[ew][ns][ew])(?![a-z])`,
);

const both = phrase`expected both, such as N 26°10' E 285.10 feet`;

/** A call without a bearing: nothing at all, or a distance alone. */
const pathless = (text: string, figures: readonly Figure[]): Parsed<null> => {
  const number = /^[^a-z]*\d[^a-z]*$/.test(text.replace(vague, ''));
  if (figuresOf(figures, 'length').length === 0 && !number) return read(null);
  const word = vague.exec(text)?.[0];
  const says = word === undefined ? '' : phrase`, ${quotedText(word)} is no angle`;
  return unread(phrase`has a distance and no bearing${says}: ${both}`);
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
  const way = wayOf(line, figures);
  if (way?.ok === false) return way;
  if (way === null) return pathless(text, figures);
  const { figure: from, azimuth } = way.value;
  const found = farOf(line, figures, { from, bare });
  if (!found.ok) return found;
  const far = found.value;
  const end = Math.max(from.end, far.figure.end);
  const ahead = curveAhead(text, end);
  const place = ahead ?? text.length;
  const curve = ahead === null ? null : curveTold(blankTo(text, place), past(figures, place), bare);
  const rest = [...restOf(figures, [from, far.figure], place), ...(curve?.unused ?? [])];
  const unused = rest.map((one) => line.slice(one.at, one.end));
  return read({
    kind: 'straight',
    azimuth,
    length: far.length,
    next: curve?.told ?? null,
    doubts: far.doubts,
    unused,
    end,
  });
};
