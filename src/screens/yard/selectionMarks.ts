import type { Primitive } from '../../drawing/primitive.ts';
import { bowKnob } from '../../editor/bowKnob.ts';
import { lyingTapes } from '../../engine/survey/lyingTapes.ts';
import { pinGround } from '../../editor/pinGround.ts';
import type { Layout } from '../../engine/layout.ts';
import type { PostId } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { trackPoints } from '../../geometry/track.ts';
import type { MarkId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { pinOf } from '../../store/pinOf.ts';
import type { Selection } from '../../store/selection.ts';
import { bandAlong } from './bandAlong.ts';
import { underlayMarks } from './underlay/underlayMarks.ts';

/** Half the width of the band over what is selected, in CSS pixels. */
const halfBand = 8;

const knob = (centre: SitePoint): Primitive => ({
  kind: 'circle',
  centre,
  radius: 0,
  least: 0.075,
  pen: 'selected',
  ink: 'paper',
});

/** What a leg is bowed by: a larger knob with a ring in it, so that it is told from those of marks. */
const bowMark = (at: SitePoint): Primitive[] => [
  { ...knob(at), least: 0.11 } as Primitive,
  { ...knob(at), least: 0.04 } as Primitive,
];

const pointsOf = (site: Site, marks: readonly MarkId[]): SitePoint[] =>
  marks.flatMap((mark) => site.marks[mark] ?? []);

/** A post where it stands; one that is held where none can stand, where it is held. */
const postKnob = (site: Site, layout: Layout, id: PostId): Primitive[] => {
  const held = pinOf(id);
  const pin = held === null ? undefined : site.pins[held];
  const at = layout.posts.get(id)?.at ?? (pin === undefined ? null : pinGround(site, pin)?.at);
  return at === null || at === undefined ? [] : [knob(at)];
};

/** What shows which thing is selected, at a scale of CSS pixels to the inch: a band, and knobs at its marks. */
export const selectionMarks = (
  site: Site,
  layout: Layout,
  { selection, scale }: { readonly selection: Selection; readonly scale: number },
): readonly Primitive[] => {
  if (selection === null) return [];
  const half = halfBand / scale;
  if (selection.kind === 'mark') return pointsOf(site, [selection.id]).map(knob);
  if (selection.kind === 'gate') {
    const gate = layout.gates[selection.id];
    if (gate === undefined) return [];
    return [...bandAlong([gate.start, gate.end], half), knob(gate.start), knob(gate.end)];
  }
  if (selection.kind === 'leg') {
    const leg = layout.lines[selection.line]?.legs.find(({ id }) => id === selection.id);
    if (leg === undefined) return [];
    const bow = bowKnob(layout, selection);
    return [
      ...bandAlong(trackPoints(leg, half / 16), half),
      knob(leg.start),
      knob(leg.end),
      ...(bow === null ? [] : bowMark(bow.at)),
    ];
  }
  if (selection.kind === 'shot') {
    const shot = site.shots[selection.id];
    return shot === undefined ? [] : [knob({ x: shot.x, y: shot.y })];
  }
  if (selection.kind === 'tape') {
    const tape = lyingTapes(site).find(({ id }) => id === selection.id);
    return tape === undefined ? [] : bandAlong([tape.start, tape.end], half);
  }
  if (selection.kind === 'underlay') return underlayMarks(site.underlays[selection.id]);
  if (selection.kind === 'post') return postKnob(site, layout, selection.id);
  if (selection.kind === 'pin') {
    const pin = site.pins[selection.id];
    const ground = pin === undefined ? null : pinGround(site, pin);
    if (ground === null) return [];
    return [...bandAlong([ground.body.start, ground.body.end], half), knob(ground.at)];
  }
  const thing = selection.kind === 'line' ? site.lines[selection.id] : site.features[selection.id];
  if (thing === undefined) return [];
  if (!('path' in thing)) return pointsOf(site, [thing.mark]).map(knob);
  const points = pointsOf(
    site,
    verticesOf(thing.path).map(({ mark }) => mark),
  );
  if (selection.kind === 'line') {
    const legs = layout.lines[selection.id]?.legs ?? [];
    const bands = legs.flatMap((leg) => bandAlong(trackPoints(leg, half / 16), half));
    return [...bands, ...points.map(knob)];
  }
  const closed = 'closed' in thing ? thing.closed : thing.kind !== 'utility';
  const round = closed ? [...points, ...points.slice(0, 1)] : points;
  return [...bandAlong(round, half), ...points.map(knob)];
};
