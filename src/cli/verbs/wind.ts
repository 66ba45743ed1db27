import type { Member } from '../../engine/structure/bendingCapacity.ts';
import type { FenceWind, WindFence, WindRail } from '../../engine/structure/fenceWind.ts';
import { allowableShare } from '../../engine/structure/allowableShare.ts';
import { closedBy } from '../../engine/structure/closedBy.ts';
import { fabricOf } from '../../engine/structure/fabricOf.ts';
import { iced } from '../../engine/structure/iced.ts';
import { postInWind, type PostInWind } from '../../engine/structure/postInWind.ts';
import type { Wind } from '../../engine/structure/velocityPressure.ts';
import { barbedStrand } from '../../trade/barbedWire.ts';
import { defaultGapUnder } from '../../trade/gapUnder.ts';
import { fencePipes } from '../../trade/pipes.ts';
import { mostOpenFrame, openFrameSource } from '../../trade/openFrames.ts';
import { pipeGrades } from '../../trade/steel.ts';
import { maxSpacing } from '../../trade/spacing.ts';
import {
  bendingSource,
  directionality,
  exposureAt,
  exposures,
  gust,
  windSource,
} from '../../trade/windTerms.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import type { Call } from '../call.ts';
import { choiceOf } from '../choiceOf.ts';
import { columns } from '../columns.ts';
import { inchStyle } from '../inchStyle.ts';
import { readLength } from '../readLength.ts';
import { readNumber } from '../readNumber.ts';
import { structureCautions } from '../structureCautions.ts';
import type { Answer, Verb } from '../verb.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const write = (length: Inches): string => formatLength(length, inchStyle);

interface Asked {
  readonly fence: Omit<WindFence, 'post'>;
  readonly member: Member;
  readonly wind: Wind & { readonly name: string; readonly ice: Inches };
  readonly bay: Inches;
  readonly grade: string;
}

type Lengths = Readonly<Record<string, Inches | null>>;

const lengthNames = [
  'fabric',
  'post',
  'wall',
  'mesh',
  'wire',
  'gap',
  'bay',
  'ice',
  'rail',
  'middle-rail',
  'bottom-rail',
] as const;

const railNames = [
  ['rail', 'top rail'],
  ['middle-rail', 'middle rail'],
  ['bottom-rail', 'bottom rail'],
] as const;

const railsOf = (lengths: Lengths): WindRail[] =>
  railNames.flatMap(([name, part]) => {
    const od = lengths[name] ?? null;
    return od === null ? [] : [{ part, od }];
  });

const readAll = (call: Call): Parsed<Lengths> => {
  const lengths: Record<string, Inches | null> = {};
  for (const name of lengthNames) {
    const length = readLength(call, name);
    if (!length.ok) return length;
    lengths[name] = length.value;
  }
  return read(lengths);
};

/** The wall of a post: as it is given, else that of the regular pipe of its diameter. */
const wallFor = (od: Inches, given: Inches | null): Parsed<Inches> => {
  if (given !== null) {
    return given <= od / 2
      ? read(given)
      : unread(phrase`--wall: expected at most ${write(inches(od / 2))}, half of the post`);
  }
  const known = fencePipes.filter((pipe) => pipe.od === od).map(({ wall }) => wall);
  if (known.length > 0) return read(inches(Math.max(...known)));
  const all = [...new Set(fencePipes.map((pipe) => pipe.od))].join(', ');
  return unread(
    phrase`--wall is missing: no pipe of the table is ${write(od)} outside; it has ${all}`,
  );
};

const readWind = (call: Call, top: number): Parsed<Omit<Asked['wind'], 'ice'>> => {
  const speed = readNumber(call, 'speed', { from: 20, to: 300, unit: 'mph' });
  if (!speed.ok) return speed;
  const name = choiceOf(
    call,
    'exposure',
    exposures.map((one) => one.name),
  );
  if (!name.ok) return name;
  const exposure = exposures.find((one) => one.name === (name.value ?? 'C'));
  if (exposure === undefined) return unread(phrase`--exposure: expected B, C or D`);
  const { label } = exposure;
  return read({
    speed: speed.value ?? 0,
    exposure: exposureAt(exposure, top),
    name: `${exposure.name}, ${label}`,
  });
};

const gradeWords: Readonly<Record<(typeof pipeGrades)[number]['label'], string>> = {
  regular: phraseOf('steel')`regular`,
  'high strength': phraseOf('steel')`high strength`,
};

const readAsked = (call: Call): Parsed<Asked> => {
  const lengths = readAll(call);
  if (!lengths.ok) return lengths;
  const { fabric, post, wall, mesh, wire, gap, bay, ice } = lengths.value;
  const od = post ?? inches(0);
  const thick = wallFor(od, wall ?? null);
  if (!thick.ok) return thick;
  const under = gap ?? defaultGapUnder.length;
  const wind = readWind(call, under + (fabric ?? 0));
  if (!wind.ok) return wind;
  const solid = readNumber(call, 'solid', { from: 1, to: 100 * mostOpenFrame, unit: '%' });
  if (!solid.ok) return solid;
  const grade = choiceOf(
    call,
    'grade',
    pipeGrades.map(({ label }) => label),
  );
  if (!grade.ok) return grade;
  const made = pipeGrades.find(({ label }) => label === grade.value) ?? pipeGrades[0];
  const strands = readNumber(call, 'barbed', { from: 1, to: 12, unit: phrase`strands` });
  if (!strands.ok) return strands;
  const fabricMade = fabricOf({ mesh: mesh ?? null, wire: wire ?? null });
  return read({
    fence: {
      ...closedBy(fabricMade, solid.value === null ? null : solid.value / 100),
      ...fabricMade,
      fabricHeight: fabric ?? inches(0),
      gapUnder: under,
      rails: railsOf(lengths.value),
      barbedWire:
        strands.value === null ? null : { strands: strands.value, across: barbedStrand.across },
    },
    member: { od, wall: thick.value, yields: made.yields },
    wind: { ...wind.value, ice: ice ?? inches(0) },
    bay: bay ?? maxSpacing.length,
    grade: phrase`${gradeWords[made.label]}, ${made.yields.toLocaleString('en-US')} psi (${made.source.text})`,
  });
};

const footPounds = (inchPounds: number): string => `${(inchPounds / 12).toFixed(0)} ft-lb`;

const solidLine = ({ shape }: Asked['fence'], { solidity, coefficient }: FenceWind): string => {
  const [share, source] = [(100 * solidity).toFixed(1), openFrameSource.text];
  return shape === 'flat'
    ? phrase`the fabric is ${share} % solid, by flat slats or a screen: coefficient ${coefficient}; ${source}`
    : phrase`the fabric is ${share} % solid: coefficient ${coefficient}; ${source}`;
};

const partWords: Readonly<Record<FenceWind['parts'][number]['part'], string>> = {
  fabric: phrase`fabric`,
  'barbed wire': phrase`barbed wire`,
  post: phrase`post`,
  'top rail': phrase`top rail`,
  'middle rail': phrase`middle rail`,
  'bottom rail': phrase`bottom rail`,
};

const windLines = ({ fence, wind, bay }: Asked, found: FenceWind): string[] => [
  phrase`velocity pressure 0.00256 × ${Number(wind.exposure.toFixed(3))} × ${directionality} × ${wind.speed}² = ${found.velocity.toFixed(2)} psf; exposure ${wind.name}; ${windSource.text}`,
  ...(wind.ice > 0
    ? [
        phrase`${write(wind.ice)} of ice all round leaves ${(100 * (1 - found.solidity)).toFixed(1)} % open of ${(100 * (1 - fence.solidity)).toFixed(1)}: a derived figure`,
      ]
    : []),
  solidLine(fence, found),
  phrase`on what is solid ${found.velocity.toFixed(2)} × ${gust} × ${found.coefficient} = ${found.pressure.toFixed(2)} psf, at least 16`,
  phrase`on a bay of ${write(bay)} and its post`,
  ...columns(
    found.parts.map(({ part, pounds, height }) => [
      `  ${partWords[part]}`,
      `${pounds.toFixed(0)} lb`,
      phrase`at ${write(height)}`,
    ]),
    ['left', 'right', 'left'],
  ),
];

const answer = (asked: Asked, found: PostInWind): Answer => {
  const { member, grade, bay, wind: blows } = asked;
  const { capacity, bends, longest, push, wind: force } = found;
  const over = bends > capacity;
  const share = ((100 * bends) / capacity).toFixed(0);
  const lines = [
    ...windLines(asked, force),
    phrase`for allowable stresses ${allowableShare(blows)} of it: ${push.pounds.toFixed(0)} lb at ${write(push.height)}, ${footPounds(bends)} at the ground`,
    phrase`a post ${member.od} in outside, ${member.wall} in wall, ${grade} may bear ${footPounds(capacity)}; ${bendingSource.text}`,
    over
      ? phrase`the post bends by ${share} % of what it may bear: no bay over ${write(longest)}`
      : phrase`the post bends by ${share} % of what it may bear; the longest bay for that is ${write(longest)}`,
    phrase`wind alone: how far fabric, ties and rails reach is another matter, and no bay is over ${write(maxSpacing.length)} (${maxSpacing.source.text})`,
    ...structureCautions,
  ];
  return {
    text: lines.join('\n'),
    json: {
      ...asked,
      ...force,
      bends,
      capacity,
      push: push.pounds,
      at: push.height,
      longest,
      bay,
    },
    stopped: over,
  };
};

const run = (call: Call): Parsed<Answer> => {
  const asked = readAsked(call);
  if (!asked.ok) return asked;
  const { fence, member, wind, bay } = asked.value;
  const found = postInWind(fence, member, { wind, bay });
  if (found === null) {
    const { solidity } = iced({ ...fence, post: member.od }, wind.ice);
    return unread(
      phrase`--${wind.ice > 0 ? 'ice' : 'mesh'}: ${(100 * solidity).toFixed(0)} % solid: expected at most ${100 * mostOpenFrame} %, where open frames end`,
    );
  }
  return read(answer(asked.value, found));
};

const length = { value: 'L', needed: false, repeats: false };

/** `wind`: wind on a bay of fence, the bending of its line post and the longest bay, with the working. */
export const wind: Verb = {
  name: 'wind',
  does: phrase`wind on a bay, what its line post bears, and the longest bay for that`,
  places: [],
  options: [
    { ...length, needed: true, name: 'fabric', does: phrase`height of the fabric` },
    { ...length, needed: true, name: 'post', does: phrase`outside diameter of the line post` },
    {
      ...length,
      needed: true,
      value: 'MPH',
      name: 'speed',
      does: phrase`basic wind speed of the place`,
    },
    { ...length, value: 'B, C, D', name: 'exposure', does: phrase`how open the land is; else C` },
    { ...length, name: 'wall', does: phrase`wall of the post; else that of regular pipe` },
    {
      ...length,
      value: 'GRADE',
      name: 'grade',
      does: phrase`its steel: ${pipeGrades.map(({ label }) => label).join(', ')}; else ${pipeGrades[0].label}`,
    },
    { ...length, name: 'bay', does: phrase`from post to post; else ${write(maxSpacing.length)}` },
    { ...length, name: 'rail', does: phrase`outside diameter of the top rail; else there is none` },
    { ...length, name: 'middle-rail', does: phrase`of the rail half way up; else there is none` },
    {
      ...length,
      name: 'bottom-rail',
      does: phrase`of the rail along the bottom; else there is none`,
    },
    {
      ...length,
      value: 'N',
      name: 'barbed',
      does: phrase`strands of barbed wire; else there are none`,
    },
    {
      ...length,
      name: 'ice',
      does: phrase`thickness of ice all round wire and pipe; else there is none`,
    },
    { ...length, name: 'mesh', does: phrase`clear between wires of the fabric; else 2` },
    { ...length, name: 'wire', does: phrase`diameter of its wire; else 0.148` },
    {
      ...length,
      value: 'PERCENT',
      name: 'solid',
      does: phrase`share that mesh, slats or screen close`,
    },
    { ...length, name: 'gap', does: phrase`between the ground and the fabric; else 2` },
  ],
  run: async (call) => run(call),
};
