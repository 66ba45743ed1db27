import type { GateId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { concreteBagSource, concreteBags, selling, type Selling } from '../../trade/selling.ts';
import type { Counting } from '../../site/counting.ts';
import { countRules } from '../../trade/countRules.ts';
import { inches } from '../../units/inches.ts';
import { newCarry, type Carry } from '../carry/carry.ts';
import type { GateLayout, Layout } from '../layout.ts';
import { loadParts, type LoadLine } from '../loadLine.ts';
import { countBy } from './countBy.ts';
import { countConcrete } from './countConcrete.ts';
import { countedThings } from './countedThings.ts';
import { countGates } from './countGates.ts';
import { countGravel } from './countGravel.ts';
import { countPlates } from './countPlates.ts';
import { countPosts } from './countPosts.ts';
import { cutFromYard } from './cutFromYard.ts';
import { fabricTickets, postTickets, railTickets } from './cutTickets.ts';
import { hungPieces } from './hungPieces.ts';
import type { Load, LoadTicket } from './load.ts';
import { lumberTickets } from './lumberTickets.ts';
import { panelTickets } from './panelTickets.ts';
import { sleeveLines } from './sleeveLines.ts';
import { soldAsSticks, soldIn } from './sold.ts';
import { phrase } from '../../phrases/phrase.ts';

const usedOf = ({ ticket }: LoadTicket) =>
  inches(
    ticket.sticks.reduce(
      (sum, { from, pieces }) =>
        from === 'offcut' ? sum : pieces.reduce((all, { length }) => all + length, sum),
      0,
    ),
  );

const stickSettings = {
  rail: 'railStick',
  fabric: 'roll',
  post: 'postStick',
  lumber: 'lumber',
} as const satisfies Partial<Record<LoadTicket['kind'], keyof Counting>>;

/** What a stick or roll is bought as; it is told also where none is bought. */
const stickOf = ({ kind, ticket }: LoadTicket, settings: Counting) =>
  ticket.sticks.find(({ from }) => from === 'bought')?.stick ??
  (kind === 'panel' ? null : settings[stickSettings[kind]]) ??
  inches(0);

/** What lines of sticks say of themselves. */
const stickRules = {
  rail: phrase`Rails from post to post and braces to the next one, between the faces of the posts.`,
  fabric: '',
  post: phrase`All posts of this pipe, cut from long pipe.`,
  lumber: phrase`Rails of boards from middle to middle of two posts, added up.`,
  panel: '',
} as const;

/** A line for the pipe of a ticket, as long as all its pieces. */
const pipeLine = (one: LoadTicket): LoadLine => ({
  part: one.kind === 'post' ? 'posts' : 'rails',
  code: one.code,
  item: one.item,
  count: one.ticket.sticks.reduce(
    (sum, { pieces }) => pieces.reduce((all, { length }) => all + length, sum),
    0,
  ),
  unit: 'length',
  each: null,
  sold: null,
  rule: stickRules[one.kind],
  source: phrase`company rule`,
  of: { posts: [], lines: [], gates: [] },
});

/** What is not sold in packs: one by one; what is measured by its length or volume, as it is. */
const singly = ({ unit }: LoadLine): Omit<Selling, 'code'> => ({
  pack: { name: unit === 'each' ? phrase`one` : phrase`as measured`, holds: 1 },
  spare: 0,
  source: { text: phrase`company rule`, status: 'practice' },
});

const inPacks = (line: LoadLine, { bag: pounds, spares }: Counting): LoadLine => {
  const [rule = ''] = line.code.split(' ');
  if (rule === 'concrete' || rule === 'grout') {
    const bag = concreteBags.find((one) => one.pounds === pounds);
    if (bag === undefined) return line;
    const pack = { name: phrase`bag of ${bag.pounds} lb`, holds: bag.makes };
    const spare = spares[rule] ?? 0;
    return { ...line, sold: soldIn(line.count, { pack, spare, source: concreteBagSource }) };
  }
  const row = selling.find(({ code }) => rule === code) ?? singly(line);
  const spare = spares[rule] ?? row.spare;
  if (row.pack.holds === 1 && spare === 0) return line;
  return { ...line, sold: soldIn(line.count, { ...row, spare }) };
};

/**
 * Everything that goes on the truck for a laid out site, each count with its rule, how it is sold, and how
 * sticks and rolls are cut. A gate that is not placed is still ordered: its parts count, its posts do not
 * exist. What is made of the same as in the list before, of which `carry` has the pieces, is taken over from that.
 */
export const loadOf = (site: Site, layout: Layout, carry: Carry = newCarry()): Load => {
  const { lengths: style, counting: settings } = site;
  const posts = [...layout.posts.values()];
  const hung = hungPieces(site, layout, carry);
  const rails = cutFromYard(railTickets(hung, settings, style), site, carry);
  const rolls = cutFromYard(fabricTickets(hung, settings, style), site, carry);
  const cutPosts = cutFromYard(postTickets(posts, site, settings), site, carry);
  const lumber = cutFromYard(lumberTickets(hung, settings, style), site, carry);
  const tickets = [...cutPosts, ...rails, ...lumber, ...rolls];
  // two pipes of one size share a code
  const sticks = new Map(tickets.map((one) => [`${one.code} ${one.item}`, one]));
  const gates = (Object.keys(site.gates) as GateId[]).toSorted();
  const lines = [
    ...countPosts(posts, site),
    ...countPlates(posts),
    ...countGravel(posts, settings.gravel),
    ...[...cutPosts, ...rails, ...lumber].map(pipeLine),
    ...(settings.railJoint === 'sleeve' ? sleeveLines(rails) : []),
    ...countBy(countRules, countedThings(hung, layout, carry), { settings, style }, carry),
    ...countGates(gates, site),
    ...countConcrete(posts, Object.values<GateLayout>(layout.gates), site),
  ].map((line): LoadLine => {
    const cut = sticks.get(`${line.code} ${line.item}`);
    if (cut === undefined) return inPacks(line, settings);
    const { bought, sticks: all } = cut.ticket;
    const fromYard = all.filter(({ from }) => from === 'offcut').length;
    const told = { bought, fromYard, used: usedOf(cut), stick: stickOf(cut, settings) };
    return { ...line, sold: soldAsSticks(told, cut.kind === 'fabric' ? 'roll' : 'stick', style) };
  });
  const placeOf = ({ part }: LoadLine): number => loadParts.indexOf(part);
  return {
    lines: lines.toSorted((a, b) => placeOf(a) - placeOf(b)),
    tickets: [...tickets, ...panelTickets(hung, style)],
  };
};
