import type { Site } from '../../src/site/site.ts';
import type { LineId, MarkId, VertexId } from '../../src/site/ids.ts';
import type { Path } from '../../src/site/path.ts';
import { freshOrders } from '../../src/site/pathOrder.ts';
import { inches } from '../../src/units/inches.ts';
import { bare, fence, gateOn } from './plainYard.ts';

/** Every leg of the big yard is so long, inches; it takes 20 bays of 10 ft where nothing is in the way. */
const side = 200 * 12;

const pathOf = (name: string, marks: readonly MarkId[]): Path => {
  const orders = freshOrders(marks.length);
  return Object.fromEntries(
    marks.map((mark, n) => [`vertex:${name}-${n}` as VertexId, { mark, order: orders[n] ?? '' }]),
  );
};

const markAt = (line: number, n: number): MarkId => `mark:${line}-${n}`;

/** A corner in the middle of the big yard. */
export const middleMark: MarkId = markAt(10, 20);

/** Battlements of 40 legs, a gate in the second of them and a gas line across some others. */
const withBattlements = (site: Site, line: number): Site => {
  const marks = Array.from({ length: 41 }, (_, n) => markAt(line, n));
  const up = line * 2 * side;
  const across = `mark:gas-${line}` as const;
  const places = Object.fromEntries([
    ...marks.map((id, n) => [
      id,
      {
        x: Math.floor(n / 2) * side,
        y: up + (n % 4 === 1 || n % 4 === 2 ? side : 0),
        label: '',
        fixed: false,
      },
    ]),
    [`${across}-a`, { x: side * 1.4, y: up - side / 3, label: '', fixed: false }],
    [`${across}-b`, { x: side * 1.7, y: up + side * 1.2, label: '', fixed: false }],
  ]) as Site['marks'];
  const [pattern] = Object.values(site.lines);
  const [gate] = Object.values(site.gates);
  if (pattern === undefined || gate === undefined) return site;
  const id: LineId = `line:long-${line}`;
  return {
    ...site,
    marks: { ...site.marks, ...places },
    lines: { ...site.lines, [id]: { ...pattern, path: pathOf(`${line}`, marks) } },
    gates: {
      ...site.gates,
      [`gate:long-${line}`]: { ...gate, line: id, leg: `vertex:${line}-1` },
    },
    features: {
      ...site.features,
      [`feature:gas-${line}`]: {
        kind: 'utility',
        run: 'buried',
        label: '',
        service: 'gas',
        width: inches(2),
        tolerance: inches(18),
        path: pathOf(`gas-${line}`, [`${across}-a`, `${across}-b`]),
      },
    },
  };
};

/** 20 fence lines of 40 legs: about 16,400 posts, with a gate and a gas line on each. */
export const bigYard = (): Site => {
  const first = fence(bare, [
    [0, -9000],
    [600, -9000],
  ]);
  const site = gateOn(first, 0, { from: 'middle', offset: 0 });
  return Array.from({ length: 20 }, (_, n) => n).reduce(withBattlements, site);
};

/** The big yard on waves of ground, told by 400 shots. */
export const bigYardOnGround = (): Site => ({
  ...bigYard(),
  shots: Object.fromEntries(
    Array.from({ length: 400 }, (_, n) => {
      const [column, row] = [n % 20, Math.floor(n / 20)];
      const at = { x: side * (1.2 * column - 1), y: side * (2.2 * row - 1) };
      return [
        `shot:${n + 1}`,
        { ...at, z: inches(10 * Math.sin(column) + 8 * Math.cos(row)), label: '' },
      ];
    }),
  ),
});
