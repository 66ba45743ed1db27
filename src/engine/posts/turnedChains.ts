import type { FenceLine } from '../../site/fenceLine.ts';
import type { Site } from '../../site/site.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Carry } from '../carry/carry.ts';
import { chainOf, type Chain } from './chain.ts';
import type { TurnedChain } from './markPosts.ts';
import { sortedEntries } from './sortedEntries.ts';
import { spotsOf, squaresRound } from './spotsOf.ts';
import { turningsOf, usesOfMarks, type Turning } from './turnings.ts';

type Vertices = ReturnType<typeof verticesOf>;

const chainsOf = (site: Site, carry: Carry): Chain[] => {
  const squares = carry.shelf<readonly string[]>('squares of a mark');
  const passes = carry.shelf<Vertices>('vertices of a line');
  const chains = carry.shelf<Chain>('chain');
  const spots = spotsOf(site, (id, mark) => squares.take(id, [mark], () => squaresRound(mark)));
  return sortedEntries(site.lines).map(([id, line]: [Chain['id'], FenceLine]) => {
    const vertices = passes.take(id, [line.path], () => verticesOf(line.path));
    const stops = vertices.flatMap(({ mark: drawn }) => {
      const mark = spots.get(drawn) ?? drawn;
      return [mark, site.marks[mark]];
    });
    return chains.take(id, [line, ...stops], () => chainOf(id, line, site, spots));
  });
};

/** The fence lines of a site on the ground, and what stands at their marks; in the order of their ids. */
export const turnedChains = (site: Site, carry: Carry): TurnedChain[] => {
  const turnings = carry.shelf<readonly Turning[]>('turnings');
  const turned = carry.shelf<TurnedChain>('turned chain');
  const chains = chainsOf(site, carry);
  const uses = usesOfMarks(chains);
  return chains.flatMap((chain) => {
    const { id } = chain;
    const spec = site.specs[chain.line.spec];
    if (spec === undefined) return [];
    const turns = turnings.settle(id, turningsOf(chain, spec.cornerAngle, uses));
    return [turned.take(id, [chain, spec, turns], () => ({ chain, spec, turnings: turns }))];
  });
};
