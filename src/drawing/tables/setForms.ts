import { leavesOf } from '../../engine/gate/termsOf.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import { writer } from '../../engine/set/setCase.ts';
import type { AsSet } from '../../site/asSet.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { heldTexts } from '../opening/heldTexts.ts';
import { openingText } from '../opening/openingText.ts';
import { gatePosts, gateTitle } from './gateKind.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { SetColumn } from './setColumns.ts';

/** What the forms of the set record are called. */
export const setFormTitles = {
  widths: phrase`Openings as set`,
  leans: phrase`Posts of the openings`,
  leaves: phrase`Leaves measured again`,
  posts: phrase`Posts as set`,
} as const;

/** Rows of texts under headings that a hand fills in; an empty text is a blank. */
export interface SetRows {
  readonly columns: readonly SetColumn[];
  readonly rows: readonly (readonly string[])[];
}

interface Drawn {
  readonly layout: GateLayout;
  readonly gate: Gate;
  readonly name: string;
  readonly write: (length: number | null | undefined) => string;
}

/** Every gate that stands between posts, by its name and the tags of these. */
const drawnOf = (site: Site, layout: Layout): Drawn[] => {
  const own = writer({ site });
  return Object.values<GateLayout>(layout.gates).flatMap((placed): Drawn[] => {
    const gate = site.gates[placed.id];
    if (gate === undefined || placed.posts === null) return [];
    const name = `${gateTitle(placed, site)}, ${gatePosts(placed, layout)}`;
    const write = (length: number | null | undefined): string =>
      length === null || length === undefined ? '' : own(length);
    return [{ layout: placed, gate, name, write }];
  });
};

const rangeText = ({ opening }: GateLayout, site: Site): string => {
  const held = heldTexts(opening, site.lengths);
  return held === null ? phrase`no width for sure` : phrase`${held.from} to ${held.to}`;
};

/** What is found between the posts of every gate: width at the top and the bottom, by whom and when. */
export const widthsForm = (site: Site, layout: Layout): SetRows => ({
  columns: ['opening', 'hold', 'range', 'top', 'bottom', 'by', 'on'],
  rows: drawnOf(site, layout).map(({ layout: own, gate: { asSet }, name, write }) => [
    name,
    openingText(own.opening.target, site.lengths),
    rangeText(own, site),
    write(asSet?.top),
    write(asSet?.bottom),
    asSet?.by ?? '',
    asSet?.on ?? '',
  ]),
});

/** How far the top of each post of every gate leans into the opening, and what else there is to say. */
export const leansForm = (site: Site, layout: Layout): SetRows => ({
  columns: ['opening', 'first lean', 'second lean', 'remark'],
  rows: drawnOf(site, layout).map(({ gate: { asSet }, name, write }) => [
    name,
    write(asSet?.leans.start),
    write(asSet?.leans.end),
    (asSet?.remark ?? '').replace(/\s+/g, ' ').trim(),
  ]),
});

const leafRow = (
  { name, write }: Drawn,
  leaf: string,
  asSet: AsSet | null,
  id: keyof AsSet['leaves'],
): string[] => {
  const widths = asSet?.leaves[id];
  return [
    `${name}, ${leaf}`,
    write(widths?.top),
    write(widths?.middle),
    write(widths?.bottom),
    write(asSet?.hinges[id]),
  ];
};

/** Leaves and hinges as they are measured again on site. */
export const leavesForm = (site: Site, layout: Layout): SetRows => ({
  columns: ['leaf', 'top', 'middle', 'bottom', 'hinges'],
  rows: drawnOf(site, layout).flatMap((drawn) => {
    const leaves = leavesOf(drawn.gate);
    return leaves.map(({ id }, n) =>
      leafRow(
        drawn,
        leaves.length === 1 ? phrase`leaf` : phrase`leaf ${n + 1}`,
        drawn.gate.asSet,
        id,
      ),
    );
  }),
});
