import { closedOn } from '../../engine/keepOut/closedOn.ts';
import type { KeepOut } from '../../engine/keepOut/keepOut.ts';
import { slopeAt } from '../../engine/ground/gradeLine.ts';
import type { Layout, Leg, Run } from '../../engine/layout.ts';
import type { Piece } from '../../geometry/throughCapsule.ts';
import { slack } from '../../geometry/tolerance.ts';
import { alongOf } from '../../site/anchor.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Hatch } from '../hatch.ts';
import type { Ink } from '../ink.ts';
import { pens } from '../pens.ts';
import { phrase } from '../../phrases/phrase.ts';
import { serviceWords } from '../plan/serviceWords.ts';

/** What ground without holes is called on a tape, and how it is drawn there. */
interface ClosedSign {
  readonly name: string;
  readonly ink: Ink;
  /** Crossed where it is kept clear by hand, level where fence has a height limit, as on the plan. */
  readonly hatch: Hatch;
}

/** Ground along a run in which no hole may be dug, or is wanted; stations of the tape, inches. */
export interface ClosedSpan extends ClosedSign {
  readonly from: Inches;
  readonly to: Inches;
}

/** A name of the site's own stands on a strip where it is no longer than this. */
const shortName = 14;

const byHand: ClosedSign = { name: phrase`KEPT CLEAR`, ink: 'keep-out', hatch: 'cross' };

const signOf = (feature: Feature | undefined): ClosedSign => {
  const hatch = 'diagonal';
  if (feature?.kind === 'utility') {
    return {
      name: serviceWords[feature.service].toUpperCase(),
      ink: pens[feature.service].ink,
      hatch,
    };
  }
  if (feature?.kind === 'tree') return { name: phrase`ROOTS`, ink: 'tree', hatch };
  const own = (feature?.label ?? '').replace(/\s+/g, ' ').trim();
  const name = own !== '' && own.length <= shortName ? own : phrase`KEEP OUT`;
  return { name, ink: 'keep-out', hatch };
};

/** Pieces that meet as one, rising. */
const joined = (pieces: readonly Piece[]): Piece[] => {
  const all: Piece[] = [];
  for (const piece of pieces.toSorted((a, b) => a.from - b.from)) {
    const last = all.at(-1);
    if (last === undefined || piece.from > last.to + slack) all.push(piece);
    else all.splice(-1, 1, { from: last.from, to: Math.max(last.to, piece.to) });
  }
  return all;
};

/** The legs of a run, each with where it begins along it in plan. */
const legsOf = (run: Run, { lines }: Pick<Layout, 'lines'>): { leg: Leg; start: number }[] => {
  const legs = new Map(lines[run.line]?.legs.map((leg) => [leg.id, leg]));
  let start = 0;
  return run.legs.flatMap((id) => {
    const leg = legs.get(id);
    if (leg === undefined) return [];
    start += leg.length;
    return [{ leg, start: start - leg.length }];
  });
};

const keptClear = (site: Site, run: Run, { leg, start }: { leg: Leg; start: number }): Piece[] =>
  Object.values(site.pins).flatMap(({ line, leg: own, anchor, holds }) => {
    if (line !== run.line || own !== leg.id || holds.kind !== 'clear') return [];
    const middle = start + alongOf(anchor, leg.length);
    return [{ from: middle - holds.reach, to: middle + holds.reach }];
  });

/**
 * Where along a run no hole may be dug for what is drawn there, and where ground is kept clear by
 * hand: the ground itself, without the room that a hole needs besides. The pieces of one keep-out
 * that meet are one; held to the run's ends; in no order. An edge of paving has no width and none.
 */
export const closedSpans = (
  run: Run,
  { site, layout, keepOuts }: { site: Site; layout: Layout; keepOuts: readonly KeepOut[] },
): readonly ClosedSpan[] => {
  const legs = legsOf(run, layout);
  const drawn = keepOuts.map((keepOut) => ({
    sign: signOf(site.features[keepOut.id]),
    pieces: legs.flatMap(({ leg, start }) =>
      closedOn(keepOut, leg, 0).map(({ from, to }) => ({ from: start + from, to: start + to })),
    ),
  }));
  const hand = { sign: byHand, pieces: legs.flatMap((leg) => keptClear(site, run, leg)) };
  const onTape = (at: number): Inches => {
    const along = run.ground === null ? inches(at) : slopeAt(run.ground.grade, inches(at));
    return inches(Math.min(run.length, Math.max(0, along)));
  };
  return [...drawn, hand].flatMap(({ sign, pieces }) =>
    joined(pieces)
      .map(({ from, to }) => ({ ...sign, from: onTape(from), to: onTape(to) }))
      .filter(({ from, to }) => from < to),
  );
};
