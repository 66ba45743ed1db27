import type { GateLayout, Layout } from '../../engine/layout.ts';
import { isTerminal, type Post } from '../../engine/post.ts';
import type { Site } from '../../site/site.ts';
import { gateLabel } from '../plan/drawGate.ts';
import { drawPlan } from '../plan/drawPlan.ts';
import { printable } from '../printable.ts';
import type { Primitive } from '../primitive.ts';
import { shorten } from '../shorten.ts';
import { customerSite } from './customerSite.ts';
import { openingWords } from './gateWords.ts';
import { overallLengths } from './overallLengths.ts';
import { phrase } from '../../phrases/phrase.ts';

const crewParts = ['ground', 'posts', 'pins', 'leaf rooms', 'marks'] as const;
const crewWords = ['gate labels', 'tags', 'chains', 'flags'] as const;

/** Least radii of posts on paper, inches. */
const least = { terminal: 0.034, line: 0.02 } as const;

/** A post as its pipe, without the work that holds it. */
const drawPipe = (post: Post): Primitive => ({
  kind: 'circle',
  centre: post.at,
  radius: post.od / 2,
  least: isTerminal(post) ? least.terminal : least.line,
  pen: null,
  ink: 'post',
});

/** A name of a gate is cut where it is longer on the plan, paper inches: the list has it whole. */
const longestName = 1.8;

/** The lengths of the sides of a building are for who tapes from it. */
const isSideLength = (primitive: Primitive): boolean =>
  primitive.kind === 'text' && primitive.ink === 'dimension';

/** A gate by its name and the opening that it is sold by. */
const gateName = (gate: GateLayout, site: Site): Primitive => {
  const drawn = site.gates[gate.id];
  const label = gateLabel(gate, drawn, site.lengths);
  const name =
    shorten(printable(drawn?.label || phrase`Gate`), longestName, 0.15, 'bold') || phrase`Gate`;
  const words = gate.placed
    ? openingWords(gate, drawn, site.lengths.system)
    : phrase`does not fit yet`;
  return label.kind === 'text' ? { ...label, text: `${name}\n${words}` } : label;
};

/**
 * The plan of a site as a customer sees it: what is in the yard, fence with its posts, gates with the way they
 * open, and how long the fence is from corner to corner. No tags, readings, flags, or ground closed to
 * the work.
 */
export const customerPlan = (site: Site, layout: Layout): readonly Primitive[] => {
  const own = customerSite(site);
  return [
    ...drawPlan(own, layout, { omit: [...crewParts, ...crewWords] }).filter(
      (primitive) => !isSideLength(primitive),
    ),
    ...[...layout.posts.values()].map(drawPipe),
    ...Object.values<GateLayout>(layout.gates).map((gate) => gateName(gate, own)),
    ...overallLengths(own, layout),
  ];
};
