import { sameSpot } from '../../geometry/sameSpot.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { LineId, MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import { chainOf, isLoop, type Chain } from './chain.ts';
import type { TurnedChain } from './markPosts.ts';
import { sortedEntries } from './sortedEntries.ts';
import { fenceMarks, spotsOf, type Spots } from './spotsOf.ts';
import { turningsOf, usesOfMarks, type MarkUses, type Turning } from './turnings.ts';

/** The marks of fence where they stand, and those that stand for others; null where each stands for itself. */
interface Placed {
  readonly used: readonly MarkId[];
  readonly marks: readonly (Mark | undefined)[];
  readonly spots: Spots | null;
}

const noSpots: Spots = new Map();

/** So many marks that have moved are looked at one by one; of more all are looked at together. */
const few = 8;

/** Whether marks that all stood apart still do, though some of them have moved. */
const stillApart = (marks: Placed['marks'], before: Placed['marks']): boolean => {
  const moved = marks.flatMap((mark, n) => (mark === before[n] ? [] : [n]));
  if (moved.length > few) return false;
  return moved.every((n) => {
    const mark = marks[n];
    return !marks.some(
      (other, k) => k !== n && mark !== undefined && other !== undefined && sameSpot(other, mark),
    );
  });
};

const placedAt = (
  site: Site,
  used: readonly MarkId[],
  marks: Placed['marks'],
  before: Placed | undefined,
): Placed => {
  const apart = before?.used === used && before.spots === null && stillApart(marks, before.marks);
  if (apart) return { used, marks, spots: null };
  const spots = spotsOf(site, used);
  const own = [...spots].every(([drawn, mark]) => drawn === mark);
  return { used, marks, spots: own ? null : spots };
};

const chainsOf = (site: Site, carry: Carry): Chain[] => {
  const { lines } = site;
  const used = carry
    .shelf<readonly MarkId[]>('marks of fence')
    .take('', [lines], () => fenceMarks(site));
  const entries = carry
    .shelf<readonly (readonly [LineId, FenceLine])[]>('lines in turn')
    .take('', [lines], () => sortedEntries(lines));
  const chains = carry.shelf<Chain>('chain');
  const placed = used.map((mark) => site.marks[mark]);
  const spots = carry
    .shelf<Placed>('spots of marks')
    .next('', [used, ...placed], (before) => placedAt(site, used, placed, before)).spots;
  return entries.map(([id, line]) => {
    const from: unknown[] = [line];
    for (const { mark: drawn } of verticesOf(line.path)) {
      const mark = spots === null ? drawn : (spots.get(drawn) ?? drawn);
      from.push(mark, site.marks[mark]);
    }
    return chains.take(id, from, () => chainOf(id, line, site, spots ?? noSpots));
  });
};

/** By which lines and legs marks are used, by the marks that each chain passes and whether it closes. */
const usesOf = (chains: readonly Chain[], carry: Carry): MarkUses => {
  const passed = carry.shelf<readonly unknown[]>('marks passed');
  const passes = carry.shelf<readonly unknown[]>('marks passed by a chain');
  const from = chains.map((chain) => {
    const { id, stops } = chain;
    const found = passes.take(id, [chain], () => [
      id,
      isLoop(chain),
      ...stops.map(({ mark }) => mark),
    ]);
    return passed.list(id, found);
  });
  return carry.shelf<MarkUses>('uses of marks').take('', from, () => usesOfMarks(chains));
};

const turnedIn = (site: Site, carry: Carry): TurnedChain[] => {
  const turnings = carry.shelf<readonly Turning[]>('turnings');
  const settled = carry.shelf<readonly Turning[]>('settled turnings');
  const turned = carry.shelf<TurnedChain>('turned chain');
  const chains = chainsOf(site, carry);
  const uses = usesOf(chains, carry);
  return chains.flatMap((chain) => {
    const { id } = chain;
    const spec = site.specs[chain.line.spec];
    if (spec === undefined) return [];
    const found = turnings.take(id, [chain, spec.cornerAngle, uses], () =>
      turningsOf(chain, spec.cornerAngle, uses),
    );
    const turns = settled.list(id, found);
    return [turned.take(id, [chain, spec, turns], () => ({ chain, spec, turnings: turns }))];
  });
};

/** The fence lines of a site on the ground, and what stands at their marks; in the order of their ids. */
export const turnedChains = (site: Site, carry: Carry): readonly TurnedChain[] =>
  carry
    .shelf<readonly TurnedChain[]>('turned chains')
    .part('', [site.lines, site.marks, site.specs], (own) => turnedIn(site, own));
