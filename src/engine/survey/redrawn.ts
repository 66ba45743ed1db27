import type { MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import type { Site } from '../../site/site.ts';

/** A document, and the same site with its marks where what was observed puts them. */
export interface Standing {
  readonly drawn: Site;
  readonly stood: Site;
}

/**
 * The document that an edit of a site as it stands makes of the one that was drawn: a mark that the
 * edit left in its place stays where it was drawn, one that it put elsewhere or fixed is drawn there
 * from now on, and all else is as edited. The document itself where the edit changed nothing.
 */
export const redrawn = ({ drawn, stood }: Standing, edited: Site): Site => {
  if (edited === stood) return drawn;
  if (edited.marks === stood.marks) return { ...edited, marks: drawn.marks };
  const marks = (Object.entries(edited.marks) as [MarkId, Mark][]).map(
    ([id, mark]) => [id, redrawnMark(mark, stood.marks[id], drawn.marks[id])] as const,
  );
  return { ...edited, marks: Object.fromEntries(marks) };
};

const redrawnMark = (mark: Mark, stood: Mark | undefined, drawn: Mark | undefined): Mark => {
  if (stood === undefined || drawn === undefined) return mark;
  if (mark === stood) return drawn;
  const stayed = mark.x === stood.x && mark.y === stood.y && mark.fixed === stood.fixed;
  return stayed ? { ...mark, x: drawn.x, y: drawn.y } : mark;
};
