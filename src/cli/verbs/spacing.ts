import { equalBays } from '../../engine/posts/equalBays.ts';
import { curveSpacing, curveSpacingSource } from '../../trade/curveSpacing.ts';
import { maxSpacing } from '../../trade/spacing.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { roundLength } from '../../units/roundLength.ts';
import { valueOf, valuesOf, type Call } from '../call.ts';
import { readLengths } from '../readLengths.ts';
import type { Answer, Verb } from '../verb.ts';
import { phrase } from '../../phrases/phrase.ts';

const style: LengthStyle = { system: 'feet', fraction: 16 };

/** More bays than anybody sets from one tape: the answer would only fill the screen. */
const mostBays = 10_000;

const rule = phrase`fewest equal bays no longer than the largest (${maxSpacing.source.text}: equidistant)`;

/** What a curve adds to a stretch: its length and bays are along it, and each bay is a chord. */
const roundCurve = (length: Inches, bay: Inches, radius: Inches) => {
  const chord = inches(2 * radius * Math.sin(bay / (2 * radius)));
  const write = (of: Inches): string => formatLength(of, style);
  return {
    text: phrase`on a radius of ${write(radius)} no bay over ${write(curveSpacing(radius))}; from post to post straight ${write(chord)}`,
    json: { radius, chord, turn: length / radius, curveRule: curveSpacingSource.text },
  };
};

const manyBays = (count: number, each: string): string =>
  count === 1 ? phrase`1 bay of ${each}` : phrase`${count} bays of ${each}`;

const manyPosts = (count: number): string =>
  count === 1 ? phrase`1 line post` : phrase`${count} line posts`;

const run = (call: Call): Parsed<Answer> => {
  const given = readLengths('length', valuesOf(call, 'length'));
  if (!given.ok) return given;
  const most = readLengths('max', valuesOf(call, 'max'));
  if (!most.ok) return most;
  const curve = readLengths('radius', valuesOf(call, 'radius'));
  if (!curve.ok) return curve;
  const [length = inches(0)] = given.value;
  const [asked = inches(1)] = most.value;
  const [radius = null] = curve.value;
  const max = radius === null ? asked : inches(Math.min(asked, curveSpacing(radius)));
  if (length / max > mostBays) {
    return unread(
      phrase`--max: ${quotedText(valueOf(call, 'max') ?? '')} makes over ${mostBays} bays of ${quotedText(valueOf(call, 'length') ?? '')}: expected a longer bay`,
    );
  }
  const { count, length: bay } = equalBays(length, max);
  const stations = Array.from({ length: count + 1 }, (_, n) => inches((length * n) / count));
  const readings = stations.map((station) => formatLength(roundLength(station, style), style));
  const round = radius === null ? null : roundCurve(length, bay, radius);
  const text = [
    phrase`${manyBays(count, formatLength(bay, style))}, ${manyPosts(count - 1)}`,
    phrase`centre to centre, from post to post ${formatLength(length, style)}, no bay over ${formatLength(max, style)}`,
    ...(round === null ? [] : [round.text]),
    phrase`tape: ${readings.join('  ')}`,
  ];
  const told = { length, max, bays: count, bay, linePosts: count - 1, stations, readings, rule };
  const json = round === null ? told : { ...told, ...round.json };
  return read({ text: text.join('\n'), json, stopped: false });
};

const length = { value: 'L', needed: true, repeats: false };

/** `spacing`: equal bays between two terminal posts, and the tape readings of the posts. */
export const spacing: Verb = {
  name: 'spacing',
  does: phrase`divides a stretch into equal bays`,
  places: [],
  options: [
    {
      ...length,
      name: 'length',
      does: phrase`the stretch, centre to centre of its terminal posts`,
    },
    { ...length, name: 'max', does: phrase`no bay is longer than this` },
    {
      ...length,
      needed: false,
      value: 'R',
      name: 'radius',
      does: phrase`the stretch is a curve, told along it, with bays as short as its radius asks for`,
    },
  ],
  run: async (call) => run(call),
};
