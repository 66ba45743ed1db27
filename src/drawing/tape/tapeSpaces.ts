import { printable } from '../printable.ts';
import { shorten } from '../shorten.ts';
import { textWidth } from '../textWidth.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import type { Infill } from '../../site/infill.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { breaksFor, brokenAt } from '../explode/brokenAt.ts';
import { fenceOutline } from '../explode/fenceOutline.ts';
import { rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { infillOn } from '../plan/infillOn.ts';
import { bestOf } from '../lettering/bestOf.ts';
import { labelAt, type LabelStyle } from '../lettering/label.ts';
import type { Lettered } from '../lettering/lettered.ts';
import type { Lettering } from '../lettering/lettering.ts';
import { textBox } from '../lettering/textBox.ts';
import { openingText } from '../opening/openingText.ts';
import { tapeLevels } from './tapeLevels.ts';
import { readingsOf, spanOf, stopsOf, type PieceStop, type TapePiece } from './tapePiece.ts';
import { xAt, type TapeReach } from './tapeReach.ts';
import { phrase } from '../../phrases/phrase.ts';

const { fence, gateName, tags } = tapeLevels;

/** What the spaces of a strip are lettered with, and where there is room. */
export interface TapeSheet {
  readonly site: Site;
  readonly layout: Layout;
  readonly style: LengthStyle;
  readonly room: Lettering;
  /** What the strip has from side to side, paper inches. */
  readonly width: number;
}

interface Between {
  readonly from: PieceStop;
  readonly to: PieceStop;
  readonly x: number;
  readonly width: number;
}

const nothing: Lettered = { lines: [], texts: [], left: [] };

/** The first of some places that is free; what finds none is left where it must not be lost. */
const letter = (
  style: LabelStyle,
  places: readonly { readonly x: number; readonly y: number }[],
  room: Lettering,
): Lettered => {
  const label = bestOf(
    room,
    places.map((at) => labelAt(style, at, radians(0))),
  );
  if (label === null) return { ...nothing, left: [style.text] };
  room.take(label.box);
  return { ...nothing, texts: label.texts };
};

/** A bay: fence from post to post, and its length over it where that fits. */
const drawBay = (
  { x, width }: Between,
  { apart, of }: { readonly apart: Inches; readonly of: Infill['kind'] },
  { style, room }: TapeSheet,
): Lettered => {
  const wire: Atom = {
    do: 'stroke',
    pen: { ink: 'fence', width: 0.018, dash: [] },
    outline: fenceOutline(
      [
        { x, y: fence },
        { x: x + width, y: fence },
      ],
      false,
      { of, window: null },
    ),
  };
  const text = formatLength(apart, style);
  const look = { text, size: 0.141, weight: 'regular', ink: 'dimension' } as const;
  const label = labelAt(look, { x: x + width / 2, y: tags + 0.08 }, radians(0));
  const fits = label.box.halfWidth * 2 + 0.2 < width && room.isFree(label.box);
  if (fits) room.take(label.box);
  // the table has every bay; on the strip only those that fit are written
  return { lines: [wire], texts: fits ? label.texts : [], left: [] };
};

/** How the clear opening of a gate lies between its posts: half a post in from each centre. */
const faces = (between: Between, reach: TapeReach, opening: Inches) => {
  const width = opening * reach.scale;
  return { x: between.x + (between.width - width) / 2, width };
};

/** Half as high as a leaf is drawn on the strip. */
const leafHalf = 0.045;

/** The leaves in an opening, parted where they meet; nothing but its two ends for a gap. */
const openingSign = (gate: GateLayout, x: number, width: number): Atom[] => {
  const upright = (at: number) =>
    [
      { x: at, y: fence - leafHalf },
      { x: at, y: fence + leafHalf },
    ] as const;
  const count = gate.leaves.length + gate.slides.length;
  const frame = rectangleOutline({ x, y: fence - leafHalf }, width, 2 * leafHalf);
  const pen = { ink: 'gate', width: 0.016, dash: [] } as const;
  if (count === 0) {
    const ends = segmentsOutline([upright(x), upright(x + width)]);
    return [{ do: 'stroke', pen, outline: ends }];
  }
  const middle = count > 1 ? segmentsOutline([upright(x + width / 2)]) : [];
  const stop = rectangleOutline({ x: x + width / 2 - 0.025, y: fence - 0.06 }, 0.05, 0.12);
  return [
    { do: 'fill', ink: 'gate', opacity: 0.15, outline: frame },
    { do: 'stroke', pen, outline: [...frame, ...middle] },
    ...(gate.stop === null
      ? []
      : [{ do: 'fill', ink: 'gate', opacity: 1, outline: stop } as const]),
  ];
};

/** As far as a swing reaches from the fence, paper inches: only its way along the tape is to scale. */
const swingReach = 0.15;
const swingSteps = 12;

/** The way of the tip of each leaf that turns, on the side of the fence to which it opens. */
const swingSign = (gate: GateLayout, x: number, width: number, scale: number): Atom[] =>
  gate.leaves.map(({ hung, width: leaf, closed, turns }) => {
    const fromStart = Math.cos(closed - gate.bearing) > 0;
    const left = Math.sin(closed + turns / 2 - gate.bearing) > 0;
    const [pin, way] = fromStart ? [x, 1] : [x + width, -1];
    const [along, across] = [way * (hung + leaf) * scale, left ? -swingReach : swingReach];
    const at = (step: number) => {
      const turned = (Math.abs(turns) * step) / swingSteps;
      return { x: pin + along * Math.cos(turned), y: fence + across * Math.sin(turned) };
    };
    const steps = Array.from({ length: swingSteps }, (_, n) => [at(n), at(n + 1)] as const);
    const open = [{ x: pin, y: fence }, at(swingSteps)] as const;
    return {
      do: 'stroke',
      pen: { ink: 'gate', width: 0.009, dash: [] },
      outline: segmentsOutline([...steps, open]),
    };
  });

/** How a gate is named over its opening; a longer name is cut, paper inches: its card has it whole. */
const nameLook = { size: 0.15, weight: 'bold', ink: 'gate' } as const;
const longestName = 2.2;

/** An opening: a gap in the fence with the leaves in it, its name and the width to hold over it. */
const drawOpening = (between: Between, reach: TapeReach, sheet: TapeSheet): Lettered => {
  const { site, layout, style, room } = sheet;
  const space = between.from.next;
  const gate = space?.kind === 'gate' ? layout.gates[space.gate] : undefined;
  if (gate === undefined) return nothing;
  const { x, width } = faces(between, reach, gate.opening.target);
  const name = site.gates[gate.id]?.label.trim() || phrase`Gate`;
  const cut = shorten(printable(name), longestName, nameLook.size, nameLook.weight);
  const text = phrase`${cut}: hold ${openingText(gate.opening.target, style)}`;
  const half = textWidth(text, nameLook.size, nameLook.weight) / 2;
  const inside = (at: number): number => Math.max(half, Math.min(sheet.width - half, at));
  const middle = x + width / 2;
  const places = [0, 0.4, -0.4, 0.8, -0.8, 1.2, -1.2].flatMap((shift) => [
    { x: inside(middle + shift), y: gateName },
    { x: inside(middle + shift), y: gateName + 0.17 },
  ]);
  const label = letter({ ...nameLook, text }, places, room);
  return {
    ...label,
    lines: [...openingSign(gate, x, width), ...swingSign(gate, x, width, reach.scale)],
  };
};

/** The wall or mark that an end post stands in from. */
const drawWall = (piece: TapePiece, reach: TapeReach): Atom[] => {
  const stops = stopsOf(piece);
  const { from, to } = spanOf(piece);
  const ends = [
    [from, stops[0]?.station ?? from],
    [to, stops.at(-1)?.station ?? to],
  ] as const;
  return ends
    .filter(([end, post]) => Math.abs(end - post) > 1 / 64)
    .map(([end]) => ({
      do: 'stroke',
      pen: { ink: 'building', width: 0.04, dash: [] },
      outline: segmentsOutline([
        [
          { x: xAt(reach, end), y: fence - 0.13 },
          { x: xAt(reach, end), y: fence + 0.1 },
        ],
      ]),
    }));
};

/** What lies between the posts of a piece: fence and openings, and a wall at an end that has one. */
export const tapeSpaces = (piece: TapePiece, reach: TapeReach, sheet: TapeSheet): Lettered => {
  const stops = stopsOf(piece);
  const of = infillOn(sheet.site, piece.run.line);
  const readings = readingsOf(piece, sheet.style);
  const apart = (from: PieceStop, to: PieceStop): Inches =>
    inches(Math.abs((readings.get(to.post) ?? 0) - (readings.get(from.post) ?? 0)));
  const lettered = stops.slice(1).map((to, n): Lettered => {
    const from = stops[n] ?? to;
    const x = xAt(reach, from.station);
    const between = { from, to, x, width: xAt(reach, to.station) - x };
    return from.next?.kind === 'gate'
      ? drawOpening(between, reach, sheet)
      : drawBay(between, { apart: apart(from, to), of }, sheet);
  });
  const texts = lettered.flatMap((one) => one.texts);
  // a swing reaches up to the lengths of the bays beside it
  const drawn = brokenAt(
    lettered.flatMap(({ lines }) => lines),
    breaksFor(texts.map(textBox)),
  );
  return {
    lines: [...drawn, ...drawWall(piece, reach)],
    texts,
    left: lettered.flatMap(({ left }) => left),
  };
};
