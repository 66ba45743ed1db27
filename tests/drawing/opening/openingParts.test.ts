import { describe, expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { openingParts } from '../../../src/drawing/opening/openingParts.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { cantilever, centreStop, gap, swing, wayYard } from '../../engine/wayYard.ts';
import { textsOf } from '../textsOf.ts';

const style = { system: 'inches', fraction: 8 } as const;

const bar = (site: Site): Atom[] => {
  const gate = layOutSite(site).gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return openingParts(gate.opening, 9, style);
};

/** The words over a bar from left to right, with a post wherever one stands. */
const row = (site: Site): string[] => {
  const atoms = bar(site);
  const posts = atoms.flatMap((atom) => {
    const [first] = atom.do === 'fill' && atom.ink === 'post' ? atom.outline : [];
    return first !== undefined && 'x' in first ? [{ x: first.x, text: 'post' }] : [];
  });
  const words = textsOf(atoms)
    .filter(({ at }) => at.y < 0.2)
    .map(({ at, text }) => ({ x: at.x, text }));
  return [...posts, ...words].toSorted((a, b) => a.x - b.x).map(({ text }) => text);
};

describe('openingParts', () => {
  it('[D19] what stands in an opening stands between its posts', () => {
    expect(row(wayYard(swing))).toEqual(['post', 'hinge', 'leaf', 'gap', 'post']);
    const halves = ['hinge', 'leaf', 'gap', 'stop', 'gap', 'leaf', 'hinge'];
    expect(row(wayYard(centreStop))).toEqual(['post', ...halves, 'post']);
    expect(row(wayYard(gap))).toEqual(['post', 'clear', 'post']);
  });

  it('[D19] the tail of a leaf that rolls is behind its post, as long as it is', () => {
    const tail = ['balance', 'overlap', 'post', 'whole leaf', 'gap'];
    expect(row(wayYard(cantilever))).toEqual([...tail, 'post']);
    expect(row(wayYard({ ...cantilever, stores: 'end' }))).toEqual([...tail, 'post'].toReversed());
    expect(row(wayYard(cantilever, 2))).toEqual([...tail, ...tail.slice(0, -1).toReversed()]);
    const words = textsOf(bar(wayYard(cantilever))).map(({ text }) => text);
    expect(words).toContain('60"');
    expect(words).toContain('6"');
    expect(words.filter((word) => word.includes('-'))).toEqual([]);
  });
});
