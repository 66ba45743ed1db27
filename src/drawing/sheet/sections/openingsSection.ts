import type { GateLayout, Layout } from '../../../engine/layout.ts';
import { surroundingsOf } from '../../../engine/sweep/meetings.ts';
import type { Site } from '../../../site/site.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { openingBar } from '../../opening/openingBar.ts';
import { setMarks } from '../../opening/setMarks.ts';
import { openingText } from '../../opening/openingText.ts';
import { detailNumber } from '../../plan/drawBubbles.ts';
import { gateKind, gatePosts, gateTitle } from '../../tables/gateKind.ts';
import { openingTable } from '../../tables/openingTable.ts';
import { withSet } from '../../tables/withSet.ts';
import { workingTable } from '../../tables/workingTable.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { rollText } from '../../tables/rollText.ts';
import { swingTexts } from '../../tables/swingTexts.ts';
import { gateCard, type CardParts, type CardRoom, type GateCard } from './gateCard.ts';
import { gateHead } from './gateHead.ts';
import { gateLines } from './gateLines.ts';
import { hangingLine } from './hangingLine.ts';
import { nothing, type Block, type Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import type { ColumnSize } from '../flow/paginate.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { oneBlock, under } from '../flow/stacks.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A column from here on has room in its schedule for what was set. */
const sideBySide = 9;
/** Before each card, paper inches. */
const apart = 0.32;
/** Clear over and under rows. */
const rowPad = { schedule: 0.02, working: 0 } as const;

/** Both posts of a gate with their outside diameters, once where these are alike. */
const postsText = ({ posts }: GateLayout, layout: Layout, site: Site): string => {
  if (posts === null) return phrase`not placed: see its flag`;
  const pipes = [posts.start, posts.end].flatMap((id) => layout.posts.get(id) ?? []);
  const sizes = pipes.map(({ od }) => phrase`${pipeSize(od, site.lengths)} OD`);
  const [one = '', other = ''] = sizes;
  const [first = '', second = ''] = pipes.map(({ tag }) => tag);
  if (one === other) return phrase`posts ${first} and ${second} ${one}`;
  return phrase`posts ${pipes.map(({ tag }, n) => `${tag} ${sizes[n] ?? ''}`).join(', ')}`;
};

const leavesText = ([one, other]: readonly string[]): string => {
  if (one === undefined) return '';
  return other === undefined ? phrase`, leaf ${one}` : phrase`, leaves ${one} and ${other}`;
};

const kindLine = (gate: GateLayout, layout: Layout, site: Site): string => {
  const leaves = gate.opening.terms.filter(({ role }) => role === 'leaf');
  const widths = leaves.map(({ planned }) => formatLength(planned, fineStyle(site.lengths)));
  const of = leavesText(widths);
  const kind = gateKind(gate);
  return `${kind.charAt(0).toUpperCase()}${kind.slice(1)}${of}, ${postsText(gate, layout, site)}.`;
};

const swingLine = (gate: GateLayout, layout: Layout): string => {
  const swing = swingTexts(gate, layout);
  if (swing !== null) return phrase`Hinged at ${swing.hingedAt}, opens ${swing.opens}.`;
  const rolls = rollText(gate, layout);
  return rolls === null ? '' : phrase`The gate ${rolls}.`;
};

const barOf = (gate: GateLayout, site: Site, width: number): Block => {
  const { nominal, asSet } = site.gates[gate.id] ?? { nominal: null, asSet: null };
  return openingBar(gate.opening, {
    width,
    style: site.lengths,
    ...(nominal === null ? {} : { nominal }),
    set: setMarks(site, asSet),
  });
};

/** What a gate is, how it moves and what else there is to know, and what to mind when it is hung. */
const gateTexts = (gate: GateLayout, layout: Layout, site: Site): readonly string[] => {
  const facts = [kindLine(gate, layout, site), swingLine(gate, layout), ...gateLines(gate, site)];
  return [facts.filter((text) => text !== '').join(' '), hangingLine(gate, site)];
};

/** The terms of an opening added up; for a gap there is nothing to add. */
const workingOf = (gate: GateLayout, site: Site, width: number): Block => {
  if (gate.opening.terms.every(({ role }) => role === 'gap')) return nothing;
  const { head, rows } = layTable(
    { ...workingTable(gate, site), title: '' },
    width,
    rowPad.working,
  );
  return stackBlocks([head, ...rows]);
};

/** What is set to a width, remembered: a card tries it at many scales of its pictures. */
const remembered = (set: (width: number) => Block): ((width: number) => Block) => {
  const known = new Map<number, Block>();
  return (width) => {
    const block = known.get(width) ?? set(width);
    known.set(width, block);
    return block;
  };
};

/** What stands on a gate's card beside its pictures; its number is that of its bubble on the plan. */
const cardParts = (gate: GateLayout, layout: Layout, site: Site): CardParts => {
  const target = openingText(gate.opening.target, site.lengths);
  const number = detailNumber(layout, gate.id);
  const name = `${number} ${gateTitle(gate, site)}, ${gatePosts(gate, layout)}: ${phrase`hold ${target}`}`;
  return {
    head: remembered((width) => gateHead(name, gate, { site, width })),
    texts: gateTexts(gate, layout, site).filter((text) => text !== ''),
    bar: remembered((width) => barOf(gate, site, width)),
    working: remembered((width) => workingOf(gate, site, width)),
  };
};

/** Under the schedule pictures are drawn at no less than this share of the scale that a page of their own has. */
const leastShare = 1 / 2;
/** A card out of its turn fills a column that is left empty by no less than this share. */
const mostEmpty = 1 / 2;

/** Whether a card in little room tells what the one on a page of its own does. */
const isAsGood = (tight: GateCard, full: GateCard): boolean =>
  (tight.ratio === null) === (full.ratio === null) && tight.left <= full.left;

/** A gate with its card, and what sets it in another room, as well as can be. */
interface Card {
  readonly gate: GateLayout;
  readonly card: GateCard;
  readonly set: (room: CardRoom) => GateCard;
}

/**
 * The card to stand under the schedule, in the room that is left there: that of the first gate, or of another
 * where more than half of the column would stay empty. Null where there is none.
 */
const underSchedule = (
  cards: readonly Card[],
  { column, left }: { readonly column: ColumnSize; readonly left: number },
): Card | null => {
  const turns = left > column.height * mostEmpty ? cards : cards.slice(0, 1);
  for (const { gate, card: full, set } of turns) {
    const mostRatio = (full.ratio ?? 0) / leastShare;
    const card = set({ ...column, height: left, mostRatio });
    if (card.block.height <= left && isAsGood(card, full)) return { gate, card, set };
  }
  return null;
};

/**
 * The opening schedule, then every gate with its pictures, its opening bar and the working of its opening, in
 * the order of the schedule: one has its card under the schedule where there is room.
 */
export const openingsSection = (site: Site, layout: Layout, column: ColumnSize): Stack[] => {
  const { width } = column;
  const gates = Object.values(layout.gates);
  if (gates.length === 0) return [];
  const schedule = openingTable(layout, site);
  // what was set stands at each gate; in the schedule only where no other column suffers from it
  const table = width < sideBySide ? schedule : withSet(schedule, gates, site);
  const first = under(heading(phrase`Openings`, width), layTable(table, width, rowPad.schedule));
  const used = [first.head, ...first.rows].reduce((sum, { height }) => sum + height, 0);
  const yard = { site, layout, around: surroundingsOf(site, layout) };
  const cards = gates.map((gate): Card => {
    const set = gateCard(gate, yard, cardParts(gate, layout, site));
    return { gate, card: set(column), set };
  });
  const early = underSchedule(cards, { column, left: column.height - used - apart });
  const later = cards.filter(({ gate }) => gate !== early?.gate);
  const stacks = [...(early === null ? [] : [early]), ...later].map(({ gate, card }) => ({
    ...oneBlock(card.block, apart),
    anchor: gate.id,
  }));
  return [first, ...stacks];
};
