import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { Misfit } from '../posts/admitGates.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

const misfitMessage = (misfit: Misfit, gate: GateLayout, site: Site): string => {
  const write = (length: Inches): string => formatLength(length, fineStyle(site.lengths));
  const name = phrase`${gateName(site, misfit.id)} (opening ${write(gate.opening.target)})`;
  const by = write(misfit.missing);
  switch (misfit.why) {
    case 'wider than its run':
      return phrase`${name} with its posts is ${by} wider than the fence between two corners: expected a longer leg or narrower leaves.`;
    case 'past the end':
      return phrase`${name} stands ${by} too far towards the end of its fence: expected it between the posts there.`;
    case 'over another gate': {
      const other = misfit.other === null ? phrase`another gate` : gateName(site, misfit.other);
      return phrase`${name} stands ${by} over ${other}: expected room for both; move one.`;
    }
  }
};

const misfitRule: Readonly<Record<Misfit['why'], string>> = {
  'wider than its run': 'gate wider than its leg',
  'past the end': 'gate past the end of its leg',
  'over another gate': 'openings overlap',
};

const notPlaced = (gate: GateLayout, misfit: Misfit | undefined, site: Site): GateFlag[] => {
  // a gate without an opening is told of where its leaves are checked
  if (gate.placed || gate.opening.target <= 0) return [];
  if (misfit === undefined) {
    const message = phrase`${gateName(site, gate.id)} has no leg to stand in: expected two marks apart from each other.`;
    return [{ level: 'stop', rule: 'gate without a leg', message }];
  }
  const message = misfitMessage(misfit, gate, site);
  return [{ level: 'stop', rule: misfitRule[misfit.why], message }];
};

/** A gate that has no place on its leg is a stop that says by how much. */
export const checkGates = (site: Site, laid: LaidLines): Flag[] => {
  const misfits = new Map(
    laid.seated
      .filter(({ seating }) => seating.misfits.length > 0)
      .flatMap(({ seating }) => seating.misfits.map((misfit) => [misfit.id, misfit] as const)),
  );
  return Object.values(laid.gates).flatMap((gate) =>
    plantedAt(gate, notPlaced(gate, misfits.get(gate.id), site)),
  );
};
