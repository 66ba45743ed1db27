import { splitLeg } from '../site/edits/splitLeg.ts';
import { markAt } from '../site/markAt.ts';
import type { MarkId } from '../site/ids.ts';
import { nextId } from '../site/nextId.ts';
import type { Site } from '../site/site.ts';
import { footingIn } from './ground.ts';
import type { Stand } from './stand.ts';

/**
 * The mark for fence at a chosen point, and the site that has it: the one that lies there; a new
 * one in a leg of fence that passes there, which is split so that both share it; else a new one.
 */
export const fenceMark = (
  site: Site,
  { point, on }: Stand,
): { readonly site: Site; readonly mark: MarkId } => {
  const footing = on === null ? null : footingIn({ site, except: [] }, point);
  if (footing?.kind === 'mark') return { site, mark: footing.id };
  if (footing?.kind !== 'leg') return markAt(site, point);
  const mark = nextId(site, 'mark');
  return { site: splitLeg(site, footing.line, footing.id, point), mark };
};
