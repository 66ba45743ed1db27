import type { LineId, MarkId, VertexId } from '../../src/site/ids.ts';
import type { Path } from '../../src/site/path.ts';
import { freshOrders } from '../../src/site/pathOrder.ts';
import type { Site } from '../../src/site/site.ts';
import { bare, fence, gateOn } from '../engine/plainYard.ts';

/** Every leg is so long, inches: 20 bays of 10 ft. */
const side = 200 * 12;
const [baysOfLeg, legsOfLine] = [20, 40];

const pathOf = (name: string, marks: readonly MarkId[]): Path => {
  const orders = freshOrders(marks.length);
  return Object.fromEntries(
    marks.map((mark, n) => [`vertex:${name}-${n}` as VertexId, { mark, order: orders[n] ?? '' }]),
  );
};

/** The nth corner of a fence line of a yard of the bench. */
export const cornerOf = (line: number, n: number): MarkId => `mark:${line}-${n}`;

/**
 * A yard of about so many posts, from 100 on: fence lines that run as battlements do, 20 bays to a leg and
 * 40 legs to a line at most, each with a gate in its second leg.
 */
export const yardOf = (posts: number): Site => {
  const first = fence(bare, [
    [0, -9000],
    [600, -9000],
  ]);
  const seed = gateOn(first, 0, { from: 'middle', offset: 0 });
  const [pattern] = Object.values(seed.lines);
  const [gate] = Object.values(seed.gates);
  if (pattern === undefined || gate === undefined) throw new Error('expected a fence with a gate');
  const legs = Math.max(2, Math.round(posts / baysOfLeg));
  const lines = Math.ceil(legs / legsOfLine);
  const marks: Record<MarkId, Site['marks'][MarkId]> = {};
  const drawn: Record<LineId, Site['lines'][LineId]> = {};
  const gates: Site['gates'] = {};
  for (let line = 0; line < lines; line += 1) {
    const own = Math.min(legsOfLine, legs - line * legsOfLine);
    const ids = Array.from({ length: own + 1 }, (_, n) => cornerOf(line, n));
    ids.forEach((id, n) => {
      const y = line * 2 * side + (n % 4 === 1 || n % 4 === 2 ? side : 0);
      marks[id] = { x: Math.floor(n / 2) * side, y, label: '', fixed: false };
    });
    drawn[`line:long-${line}`] = { ...pattern, path: pathOf(`${line}`, ids) };
    if (own < 2) continue;
    Object.assign(gates, {
      [`gate:long-${line}`]: { ...gate, line: `line:long-${line}`, leg: `vertex:${line}-1` },
    });
  }
  return { ...seed, marks, lines: drawn, gates };
};
