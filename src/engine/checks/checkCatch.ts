import { slack } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, sum } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { Term } from '../opening.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

const noSureOpening = ({ id, opening }: GateLayout, site: Site): GateFlag[] => {
  if (opening.holdsFrom <= opening.holdsTo + slack) return [];
  const by = formatLength(inches(opening.holdsFrom - opening.holdsTo), fineStyle(site.lengths));
  const message = phrase`${gateName(site, id)}: no opening holds for sure, the hinges may vary by ${by} more than the latch takes up: measure the hinges or choose a latch of longer reach.`;
  return [{ level: 'settle', rule: 'no sure opening', message }];
};

/** What there is between two ends of some terms, all told, inches. */
const between = (terms: readonly Term[], from: 'low' | 'planned', to: 'planned' | 'high'): number =>
  sum(terms.map((term) => inches(term[to] - term[from])));

const outsideCatch = ({ id, opening }: GateLayout, site: Site): GateFlag[] => {
  const { target, holdsFrom, holdsTo, terms } = opening;
  const over = target - holdsTo;
  const out = Math.max(holdsFrom - target, over);
  if (holdsFrom > holdsTo + slack || out <= slack) return [];
  const write = (length: number): string => formatLength(inches(length), fineStyle(site.lengths));
  const of = (spread: Term['spread']) => terms.filter((term) => term.spread === spread);
  const latches = of('catch');
  const gap = write(sum(latches.map(({ planned }) => planned)));
  const [unsure, loose] = [of('uncertain'), of('adjustable')];
  const adjusted = loose.length === 0 ? '' : phrase` and what can be adjusted`;
  const told =
    over > 0
      ? phrase`the planned gap of ${gap} and the ${write(between(unsure, 'low', 'planned'))} that hinges and leaves may take less outrun the latch, which catches up to ${write(sum(latches.map(({ high }) => high)))}${adjusted}`
      : phrase`the planned gap of ${gap} less the ${write(between(unsure, 'planned', 'high'))} that hinges and leaves may take more falls short of the latch, which catches from ${write(sum(latches.map(({ low }) => low)))}${adjusted}`;
  const message = phrase`${gateName(site, id)}: ${told}, by ${write(out)}: plan another gap, measure the hinges or take a latch of longer reach.`;
  return [{ level: 'settle', rule: 'planned gap outside the catch', message }];
};

/** Openings that do not hold for sure, at any width or at the one that is planned. */
export const checkCatch = (site: Site, laid: LaidLines): Flag[] =>
  Object.values(laid.gates).flatMap((gate) =>
    plantedAt(gate, [...noSureOpening(gate, site), ...outsideCatch(gate, site)]),
  );
