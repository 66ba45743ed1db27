import type { Layout } from '../engine/layout.ts';
import type { Site } from '../site/site.ts';

/**
 * Wraps a layout function so that the two documents asked for last (the present and the draft of
 * a gesture) are laid out once each. Sites are told apart by identity: a changed site is another
 * object. Older layouts are let go, however long the history.
 */
export const rememberLayouts = (layOut: (site: Site) => Layout): ((site: Site) => Layout) => {
  let known: readonly { readonly site: Site; readonly layout: Layout }[] = [];
  return (site) => {
    const found = known.find((entry) => entry.site === site);
    if (found !== undefined && found === known[0]) return found.layout;
    const newest = found ?? { site, layout: layOut(site) };
    known = [newest, ...known.filter((entry) => entry !== newest)].slice(0, 2);
    return newest.layout;
  };
};
