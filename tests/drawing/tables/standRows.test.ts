import { describe, expect, it } from 'vitest';
import { gateKind } from '../../../src/drawing/tables/gateKind.ts';
import { holeTable } from '../../../src/drawing/tables/holeTable.ts';
import { rollText } from '../../../src/drawing/tables/rollText.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { receiverFor } from '../../../src/trade/receivers.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { cantilever, centreStop, gap, swing, wayYard } from '../../engine/wayYard.ts';

const inInches: Site['lengths'] = { system: 'inches', fraction: 8 };

const beside = (site: Site) => {
  const told = { ...site, lengths: inInches };
  const layout = layOutSite(told);
  const [line] = Object.values(layout.lines);
  if (line === undefined) throw new Error('no line');
  const posts = line.runs.reduce((sum, run) => sum + run.posts.length, 0);
  const { rows } = holeTable(line, layout, told);
  return rows
    .slice(posts)
    .map(([, , tag, what, reads, , , od, hole]) => [tag, what, reads, od, hole]);
};

const hookedAtEnd = (site: Site): Site => ({
  ...site,
  lines: Object.fromEntries(
    Object.entries(site.lines).map(([id, line]) => [id, { ...line, hook: 'end' as const }]),
  ),
});

describe('standRows', () => {
  // opening 48 about 300: face at 276, first roller 2 behind it, second 54 farther
  it('[D50] roller posts are found by the tape and how far off the line they are', () => {
    expect(beside(wayYard(cantilever))).toEqual([
      ['R1', 'roller post, Gate, 6" left of the line', '274"', '4.000"', '16" × 30"'],
      ['R2', 'roller post, Gate, 6" left of the line', '220"', '4.000"', '16" × 30"'],
    ]);
    const [first] = beside(hookedAtEnd(wayYard(cantilever)));
    expect(first?.slice(1, 3)).toEqual(['roller post, Gate, 6" right of the line', '326"']);
  });

  it('[D50] a receiver is a hole in the middle of the gap', () => {
    const rows = (ground: Parameters<typeof receiverFor>[0]) => {
      const { source: _, ...receiver } = receiverFor(ground);
      return beside(wayYard(swing, 2, { receiver }));
    };
    const sleeve = 'sleeve set in concrete, its top flush';
    const said = (what: string) => `receiver, Gate, in the line: ${what}, 1.049" inside`;
    expect([...rows('loose soil'), ...rows('firm soil'), ...rows('concrete')]).toEqual([
      ['', said(`${sleeve}, in loose soil`), '300"', '', '10" × 24"'],
      ['', said('driven pipe, its end flattened, in firm soil'), '300"', '', '1" × 16"'],
      ['', said('hole drilled, in concrete'), '300"', '', '1" × 16"'],
    ]);
  });

  it('[D50] a stop between two leaves has a hole in the middle of the opening', () => {
    // four times an OD of 4 in, 30 in deep for a fence of 6 ft: ASTM F567-07 5.1
    expect(beside(wayYard(centreStop))).toEqual([
      ['S1', 'stop between the leaves, Gate, in the line', '300"', '4.000"', '16" × 30"'],
    ]);
  });

  it('[D50] a post that holds a leaf open stands off the line, at the tip of its leaf', () => {
    const rows = beside(wayYard(swing, 2, { holdOpen: true }));
    // pin 15/16 off the face, leaf 56 7/8: 57 13/16 off the line, to the eighth
    const what = 'post that holds a leaf open, Gate, 57 7/8" left of the line';
    expect(rows.map((row) => row.slice(0, 2))).toEqual([
      ['H1', what],
      ['H2', what],
    ]);
  });

  it('[D50] a plain gate has nothing beside it', () => {
    expect(beside(wayYard(swing))).toEqual([]);
    expect(beside(wayYard(gap))).toEqual([]);
  });
});

describe('how gates are called', () => {
  it('[D30] by the way they close and their leaves', () => {
    const kind = (site: Site) => {
      const gate = layOutSite(site).gates[firstGate(site)];
      return gate === undefined ? '' : gateKind(gate);
    };
    expect(
      [
        wayYard(swing),
        wayYard(swing, 2),
        wayYard(centreStop),
        wayYard(cantilever),
        wayYard(cantilever, 2),
        wayYard(gap),
      ].map(kind),
    ).toEqual([
      'single swing',
      'double swing',
      'double swing on a centre stop',
      'single cantilever',
      'double cantilever',
      'gap without a gate',
    ]);
  });

  it('[D30] a leaf that rolls says past which post and on which side', () => {
    const says = (site: Site) => {
      const layout = layOutSite(site);
      const gate = layout.gates[firstGate(site)];
      return gate === undefined ? null : rollText(gate, layout);
    };
    expect(says(wayYard(cantilever))).toBe('rolls past B, on the left, looking from B to C');
    expect(says(wayYard({ ...cantilever, stores: 'end' }))).toBe(
      'rolls past C, on the right, looking from C to B',
    );
    expect(says(wayYard(cantilever, 2, { opens: 'right' }))).toBe(
      'rolls apart past B and C, on the right, looking from B to C',
    );
    expect(says(wayYard(swing))).toBeNull();
  });
});
