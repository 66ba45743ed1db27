import type { MarkId, VertexId } from '../../site/ids.ts';
import type { Path } from '../../site/path.ts';
import type { Site } from '../../site/site.ts';
import type { Selection } from '../../store/selection.ts';

const cornerMark = (site: Site, [kind, owner, id]: readonly string[]): Selection => {
  const map = (kind === 'lines' ? site.lines : site.features) as Readonly<
    Record<string, { readonly path?: Path }>
  >;
  const mark = map[owner ?? '']?.path?.[id as VertexId]?.mark;
  return mark === undefined ? null : { kind: 'mark', id: mark };
};

/** What is selected on the drawing to show a part that two copies disagree about; null for what is not on it. */
export const selectionOf = (site: Site, key: string): Selection => {
  const [kind = '', first = '', ...rest] = key.split(' ');
  switch (kind) {
    case 'lines':
      return { kind: 'line', id: first as `line:${string}` };
    case 'gates':
      return { kind: 'gate', id: first as `gate:${string}` };
    case 'leaves':
      return { kind: 'gate', id: (rest[0] ?? '') as `gate:${string}` };
    case 'features':
      return { kind: 'feature', id: first as `feature:${string}` };
    case 'marks':
      return { kind: 'mark', id: first as MarkId };
    case 'corners':
      return cornerMark(site, [first, ...rest]);
    case 'pins':
      return { kind: 'pin', id: first as `pin:${string}` };
    case 'shots':
      return { kind: 'shot', id: first as `shot:${string}` };
    case 'observations':
      return { kind: 'tape', id: first as `observation:${string}` };
    case 'underlays':
      return { kind: 'underlay', id: first as `underlay:${string}` };
    default:
      return null;
  }
};
