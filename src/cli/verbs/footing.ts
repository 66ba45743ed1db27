import { footingRules } from '../../engine/structure/footingRules.ts';
import { footing as footingOf, type Footing } from '../../engine/structure/footing.ts';
import { lateralOf, soilOf } from '../../engine/structure/lateralOf.ts';
import type { PolePush, PoleTrial } from '../../engine/structure/poleFooting.ts';
import type { Conditions } from '../../site/conditions.ts';
import { isolatedPoles, soils, weakestSoil } from '../../trade/soils.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { isGiven, type Call } from '../call.ts';
import { choiceOf } from '../choiceOf.ts';
import { columns } from '../columns.ts';
import { inchStyle } from '../inchStyle.ts';
import { readLength } from '../readLength.ts';
import { readNumber } from '../readNumber.ts';
import { structureCautions } from '../structureCautions.ts';
import type { Answer, Verb } from '../verb.ts';
import { phrase } from '../../phrases/phrase.ts';

const write = (length: Inches | null): string =>
  length === null ? phrase`none found` : formatLength(length, inchStyle);

const feet = (length: Inches): string => `${(length / 12).toFixed(2)} ft`;

type Ground = Pick<Conditions, 'soil' | 'isolated'>;

const groundText = (ground: Ground): string => {
  const soil = soilOf(ground);
  const { factor, source } = isolatedPoles;
  const raised = ground.isolated ? ` × ${factor} (${source.text})` : '';
  const told = phrase`ground: ${soil.label}, ${soil.lateral} psf for each foot${raised} = ${lateralOf(ground)}; ${soil.source.text}`;
  return ground.soil === null
    ? phrase`${told}; taken since nobody has said what the ground is`
    : told;
};

const trialRow = ({ depth, pressure, term, asks }: PoleTrial): string[] => [
  `  ${phrase`trial at ${feet(depth)}`}`,
  `S₁ ${pressure.toFixed(0)} psf`,
  `A ${term.toFixed(3)} ft`,
  phrase`asks for ${feet(asks)}`,
];

/** The first trials and the last one: between them they only come closer. */
const shownTrials = (trials: readonly PoleTrial[]): readonly PoleTrial[] =>
  trials.length <= 4 ? trials : [...trials.slice(0, 3), ...trials.slice(-1)];

const ruleLines = ({ rows }: Footing): string[] => [
  ...columns(
    rows.map(({ rule, diameter, depth, source }) => [
      footingRules[rule],
      diameter === null ? '' : phrase`${write(diameter)} across`,
      phrase`${write(depth)} deep`,
      source,
    ]),
  ),
  ...rows.flatMap(({ trials }) => columns(shownTrials(trials).map(trialRow))),
];

const sizeLine = ({ diameter, depth, concrete }: Footing): string =>
  depth === null || concrete === null
    ? phrase`no depth down to 40 ft holds that push on ${write(diameter)}: a wider hole, other ground or a designed footing`
    : phrase`the largest of each: ${write(diameter)} across, ${write(depth)} deep, ${(concrete / 1728).toFixed(2)} cu ft of concrete or grout without the post`;

const readPush = (call: Call): Parsed<PolePush | null> => {
  const pounds = readNumber(call, 'push', { from: 0, to: 100_000, unit: 'lb' });
  if (!pounds.ok) return pounds;
  const height = readLength(call, 'at');
  if (!height.ok) return height;
  if (pounds.value === null && height.value === null) return read(null);
  if (pounds.value === null)
    return unread(phrase`--push is missing: expected the pounds that push there`);
  if (height.value === null) return unread(phrase`--at is missing: expected how high the push is`);
  return read({ pounds: pounds.value, height: height.value });
};

const readGround = (call: Call): Parsed<Ground> => {
  const soil = choiceOf(
    call,
    'soil',
    soils.map(({ name }) => name),
  );
  return soil.ok ? read({ soil: soil.value, isolated: isGiven(call, 'isolated') }) : soil;
};

const run = (call: Call): Parsed<Answer> => {
  const sizes: Record<string, Inches | null> = {};
  for (const name of ['post', 'fabric', 'leaf', 'frost']) {
    const length = readLength(call, name);
    if (!length.ok) return length;
    sizes[name] = length.value;
  }
  const push = readPush(call);
  if (!push.ok) return push;
  const ground = readGround(call);
  if (!ground.ok) return ground;
  const held = isGiven(call, 'paved') ? ('by paving' as const) : ('by nothing' as const);
  const lateral = lateralOf(ground.value);
  const found = footingOf({
    od: sizes['post'] ?? inches(0),
    fabricHeight: sizes['fabric'] ?? inches(0),
    leaf: sizes['leaf'] ?? null,
    frost: sizes['frost'] ?? null,
    into: isGiven(call, 'rock') ? 'rock' : 'soil',
    pole: push.value === null ? null : { push: push.value, lateral, held },
  });
  const lines = [
    ...ruleLines(found),
    ...(push.value === null ? [] : [groundText(ground.value)]),
    sizeLine(found),
    ...structureCautions,
  ];
  const json = { ...found, ground: push.value === null ? null : { ...ground.value, lateral } };
  return read({ text: lines.join('\n'), json, stopped: found.depth === null });
};

const length = { value: 'L', needed: false, repeats: false };
const flag = { value: null, needed: false, repeats: false };

/** `footing`: the hole of a post by every rule that applies, with its working. */
export const footing: Verb = {
  name: 'footing',
  does: phrase`the hole of a post by each rule, and by the pole formula for a push`,
  places: [],
  options: [
    { ...length, needed: true, name: 'post', does: phrase`outside diameter of the post` },
    { ...length, needed: true, name: 'fabric', does: phrase`height of the fabric` },
    { ...length, name: 'leaf', does: phrase`the widest leaf that hangs from it` },
    { ...length, name: 'frost', does: phrase`how deep the ground freezes there` },
    {
      ...flag,
      value: 'LB',
      name: 'push',
      does: phrase`pounds that push on it, as \`wind\` tells them`,
    },
    { ...length, name: 'at', does: phrase`how high over the ground that push is` },
    {
      ...flag,
      value: 'SOIL',
      name: 'soil',
      does: phrase`what the ground is: ${soils.map(({ name }) => name).join(', ')}; else ${weakestSoil.name}`,
    },
    { ...flag, name: 'rock', does: phrase`the post stands in a core drilled in rock` },
    {
      ...flag,
      name: 'isolated',
      does: phrase`half an inch of movement at the ground does no harm`,
    },
    { ...flag, name: 'paved', does: phrase`paving holds the post at the ground` },
  ],
  run: async (call) => run(call),
};
