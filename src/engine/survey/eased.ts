import type { MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Site } from '../../site/site.ts';
import { adjusted } from './adjusted.ts';
import { networks } from './networks.ts';
import type { Standing } from './redrawn.ts';
import type { Spot } from './sighting.ts';
import { sightingsOf } from './surveyed.ts';

/** The marks that an edit drew anew, or elsewhere than they were drawn. */
const redrawnMarks = (before: Site, drawn: Site): MarkId[] =>
  (Object.entries(drawn.marks) as [MarkId, Mark][])
    .filter(([id, { x, y, fixed }]) => {
      const was = before.marks[id];
      return !fixed && (was === undefined || was.x !== x || was.y !== y);
    })
    .map(([id]) => id);

/**
 * A document in which the marks that an edit drew elsewhere go on to where their tapes let them, while
 * every other mark stays where it stood: a corner that is dragged takes no house along by its tape.
 * `before` is the document and its site before the edit, `drawn` the document after it.
 */
export const eased = ({ drawn: before, stood }: Standing, drawn: Site): Site => {
  if (drawn.marks === before.marks) return drawn;
  const moved = new Set(redrawnMarks(before, drawn));
  const seen = sightingsOf(drawn).filter((one) =>
    Object.values(marksObserved(one.seen)).some((id) => moved.has(id)),
  );
  if (seen.length === 0) return drawn;
  const spots = new Map(
    (Object.entries(drawn.marks) as [MarkId, Mark][]).map(([id, mark]): [MarkId, Spot] => {
      const { x, y } = moved.has(id) ? mark : (stood.marks[id] ?? mark);
      return [id, { x, y, fixed: !moved.has(id) }];
    }),
  );
  const places = networks(spots, seen).flatMap((network) => [...adjusted(network).places]);
  const marks = places.flatMap(([id, { x, y }]): [MarkId, Mark][] => {
    const mark = drawn.marks[id];
    return mark === undefined || !moved.has(id) ? [] : [[id, { ...mark, x, y }]];
  });
  return { ...drawn, marks: { ...drawn.marks, ...Object.fromEntries(marks) } };
};
