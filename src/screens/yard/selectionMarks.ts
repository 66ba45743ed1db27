import type { Primitive } from '../../drawing/primitive.ts';
import type { Layout } from '../../engine/layout.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import type { Selection } from '../../store/selection.ts';

const stretch = (points: readonly SitePoint[], closed = false): Primitive => ({
  kind: 'polyline',
  points,
  closed,
  pen: 'selected',
});

const knob = (centre: SitePoint): Primitive => ({
  kind: 'circle',
  centre,
  radius: 0,
  least: 0.075,
  pen: 'selected',
  ink: 'paper',
});

const pointsOf = (site: Site, marks: readonly MarkId[]): SitePoint[] =>
  marks.flatMap((mark) => site.marks[mark] ?? []);

/** What shows which thing is selected: it is drawn over in the colour of the hand, its marks as knobs. */
export const selectionMarks = (
  site: Site,
  layout: Layout,
  selection: Selection,
): readonly Primitive[] => {
  if (selection === null) return [];
  if (selection.kind === 'mark') return pointsOf(site, [selection.id]).map(knob);
  if (selection.kind === 'gate') {
    const gate = layout.gates[selection.id];
    if (gate === undefined) return [];
    return [stretch([gate.start, gate.end]), knob(gate.start), knob(gate.end)];
  }
  if (selection.kind === 'leg') {
    const leg = layout.lines[selection.line]?.legs.find(({ id }) => id === selection.id);
    if (leg === undefined) return [];
    return [stretch([leg.start, leg.end]), knob(leg.start), knob(leg.end)];
  }
  const thing = selection.kind === 'line' ? site.lines[selection.id] : site.features[selection.id];
  if (thing === undefined) return [];
  if (!('path' in thing)) return pointsOf(site, [thing.mark]).map(knob);
  const points = pointsOf(
    site,
    verticesOf(thing.path).map(({ mark }) => mark),
  );
  const closed = 'closed' in thing ? thing.closed : thing.kind !== 'utility';
  return [stretch(points, closed), ...points.map(knob)];
};
