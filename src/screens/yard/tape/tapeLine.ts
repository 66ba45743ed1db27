import type { Layout } from '../../../engine/layout.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import type { LineId, MarkId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { pinOf } from '../../../store/pinOf.ts';
import type { Lit } from '../../../store/session.ts';
import type { Selection } from '../../../store/selection.ts';

const lineIds = (site: Site): LineId[] => (Object.keys(site.lines) as LineId[]).toSorted();

const through = (site: Site, mark: MarkId): LineId | undefined =>
  lineIds(site).find((id) =>
    verticesOf(site.lines[id]?.path ?? {}).some((vertex) => vertex.mark === mark),
  );

/** The line that has the most of what is lit up, the first of several; undefined for none. */
const litLine = (
  { gates }: Site,
  { posts }: Pick<Layout, 'posts'>,
  lit: Lit | null,
): LineId | undefined => {
  const on = [
    ...(lit?.lines ?? []),
    ...(lit?.posts ?? []).flatMap((id) => posts.get(id)?.lines ?? []),
    ...(lit?.gates ?? []).flatMap((id) => gates[id]?.line ?? []),
  ];
  const counts = new Map<LineId, number>();
  for (const id of on) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].toSorted(([, a], [, b]) => b - a)[0]?.[0];
};

/**
 * The fence line that the tape shows: the one that the selection is on, else the one that has the most of
 * what is lit up, else the first; null for none.
 */
export const tapeLine = (
  site: Site,
  layout: Pick<Layout, 'posts'>,
  { selection, lit }: { readonly selection: Selection; readonly lit: Lit | null },
): LineId | null => {
  const { posts } = layout;
  const [first = null] = lineIds(site);
  if (selection === null) return litLine(site, layout, lit) ?? first;
  if (selection.kind === 'line') return selection.id;
  if (selection.kind === 'leg') return selection.line;
  if (selection.kind === 'gate') return site.gates[selection.id]?.line ?? first;
  if (selection.kind === 'pin') return site.pins[selection.id]?.line ?? first;
  if (selection.kind === 'post') {
    const pin = pinOf(selection.id);
    return (
      posts.get(selection.id)?.lines[0] ?? (pin === null ? first : (site.pins[pin]?.line ?? first))
    );
  }
  return selection.kind === 'mark' ? (through(site, selection.id) ?? first) : first;
};
