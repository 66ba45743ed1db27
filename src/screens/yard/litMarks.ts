import type { Primitive } from '../../drawing/primitive.ts';
import type { Layout } from '../../engine/layout.ts';
import { trackPoints } from '../../geometry/track.ts';
import type { Lit } from '../../store/session.ts';
import { bandAlong } from './bandAlong.ts';

/** Half the width of a band, in CSS pixels. */
const halfBand = 8;

/** What shows the things that one line of the load list counts: rings round posts, bands along fence and gates. */
export const litMarks = (layout: Layout, lit: Lit | null, scale: number): readonly Primitive[] => {
  if (lit === null) return [];
  const half = halfBand / scale;
  const posts = lit.posts.flatMap((id): Primitive[] => {
    const centre = layout.posts.get(id)?.at;
    return centre === undefined
      ? []
      : [{ kind: 'circle', centre, radius: 0, least: 0.1, pen: 'selected', ink: null }];
  });
  const runs = lit.lines.flatMap((id) =>
    (layout.lines[id]?.runs ?? []).flatMap((run) => bandAlong(trackPoints(run, half / 16), half)),
  );
  const gates = lit.gates.flatMap((id) => {
    const gate = layout.gates[id];
    return gate === undefined ? [] : bandAlong([gate.start, gate.end], half);
  });
  return [...runs, ...gates, ...posts];
};
