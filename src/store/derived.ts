import type { Layout } from '../engine/layout.ts';
import type { Laying } from '../engine/layOutFrom.ts';
import { drawnAlike } from '../site/drawnAlike.ts';
import type { Site } from '../site/site.ts';

type LayOut = (site: Site, before: Laying | null, other: Laying | null) => Laying;

/**
 * Wraps a layout function so that the two documents asked for last (the present and the draft of
 * a gesture) are laid out once each, every one from what those before it left: a draft from the
 * draft before and from the present, so that only what the gesture touches is worked out again.
 * Sites are told apart by identity: a changed site is another object; one that differs in nothing but
 * the pictures under it has the very same layout. Older layouts are let go, however long the history.
 */
export const rememberLayouts = (layOut: LayOut): ((site: Site) => Layout) => {
  // the one asked for last comes first
  let known: readonly { readonly site: Site; readonly laying: Laying }[] = [];
  // amid a gesture the present is asked for between two drafts, which have more in common
  let latest: Laying | null = null;
  return (site) => {
    const found = known.find((entry) => entry.site === site);
    if (found !== undefined && found === known[0]) return found.laying.layout;
    const alike = known.find((entry) => drawnAlike(entry.site, site));
    const other = known.find(({ laying: one }) => one !== latest)?.laying ?? null;
    const laying = alike?.laying ?? layOut(site, latest, other);
    if (alike === undefined) latest = laying;
    const newest = found ?? { site, laying };
    known = [newest, ...known.filter((entry) => entry !== newest)].slice(0, 2);
    return newest.laying.layout;
  };
};
