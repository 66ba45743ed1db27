import { slack, spot } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { gapAt } from '../gate/gapAt.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { Misfit } from '../posts/admitGates.ts';
import { gateName } from './names.ts';

type GateFlag = Omit<Flag, 'place' | 'at'>;

const misfitMessage = (misfit: Misfit, gate: GateLayout, site: Site): string => {
  const write = (length: Inches): string => formatLength(length, fineStyle(site.lengths));
  const name = `${gateName(site, misfit.id)} (opening ${write(gate.opening.target)})`;
  const by = write(misfit.missing);
  switch (misfit.why) {
    case 'wider than its run':
      return `${name} with its posts is ${by} wider than the fence between two corners: expected a longer leg or narrower leaves.`;
    case 'past the end':
      return `${name} stands ${by} too far towards the end of its fence: expected it between the posts there.`;
    case 'over another gate': {
      const other = misfit.other === null ? 'another gate' : gateName(site, misfit.other);
      return `${name} stands ${by} over ${other}: expected room for both; move one.`;
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
    const message = `${gateName(site, gate.id)} has no leg to stand in: expected two marks apart from each other.`;
    return [{ level: 'stop', rule: 'gate without a leg', message }];
  }
  const message = misfitMessage(misfit, gate, site);
  return [{ level: 'stop', rule: misfitRule[misfit.why], message }];
};

const noSureOpening = ({ id, opening }: GateLayout, site: Site): GateFlag[] => {
  if (opening.holdsFrom <= opening.holdsTo + slack) return [];
  const by = formatLength(inches(opening.holdsFrom - opening.holdsTo), fineStyle(site.lengths));
  const message = `${gateName(site, id)}: no opening holds for sure, the hinges may vary by ${by} more than the latch takes up: measure the hinges or choose a latch of longer reach.`;
  return [{ level: 'settle', rule: 'no sure opening', message }];
};

const outsideCatch = ({ id, opening }: GateLayout, site: Site): GateFlag[] => {
  const { target, holdsFrom, holdsTo } = opening;
  const out = Math.max(holdsFrom - target, target - holdsTo);
  if (holdsFrom > holdsTo + slack || out <= slack) return [];
  const by = formatLength(inches(out), fineStyle(site.lengths));
  const message = `${gateName(site, id)}: the planned opening is ${by} outside what holds for sure: plan another gap or measure the hinges.`;
  return [{ level: 'settle', rule: 'planned gap outside the catch', message }];
};

const notMeasured = ({ id }: GateLayout, site: Site): GateFlag[] => {
  const gate = site.gates[id];
  if (gate === undefined) return [];
  const open = leavesOf(gate).flatMap(({ from }, n) =>
    from === 'measured' ? [] : [`${n + 1} is ${from === 'copied' ? 'copied' : 'from a catalogue'}`],
  );
  if (open.length === 0) return [];
  const message = `${gateName(site, id)}: leaf ${open.join(', leaf ')}: measure every leaf at top and bottom.`;
  return [{ level: 'settle', rule: 'leaf not measured', message }];
};

const calledOtherwise = ({ id, opening }: GateLayout, site: Site): GateFlag[] => {
  const nominal = site.gates[id]?.nominal ?? null;
  if (nominal === null || Math.abs(nominal - opening.target) < spot) return [];
  const write = (length: number): string => formatLength(inches(length), fineStyle(site.lengths));
  const { planned, verdict, by } = gapAt(opening, nominal);
  const end = by > 0 ? `${verdict} by ${write(by)}` : verdict;
  const left =
    planned < 0
      ? `are ${write(-planned)} too close for the leaves`
      : `leave a gap of ${write(planned)}`;
  const message = `${gateName(site, id)} is called ${write(nominal)} but its opening is ${write(opening.target)}: posts set at what it is called ${left}: ${end}.`;
  return [{ level: 'settle', rule: 'called otherwise than its opening', message }];
};

/** What there is to say about each gate: whether it fits, holds, and was measured. */
export const checkGates = (site: Site, laid: LaidLines): Flag[] => {
  const misfits = new Map(
    laid.seated.flatMap(({ seating }) => seating.misfits).map((misfit) => [misfit.id, misfit]),
  );
  return Object.values(laid.gates).flatMap((gate) =>
    [
      ...notPlaced(gate, misfits.get(gate.id), site),
      ...noSureOpening(gate, site),
      ...outsideCatch(gate, site),
      ...notMeasured(gate, site),
      ...calledOtherwise(gate, site),
    ].map((flag) => ({ ...flag, place: { kind: 'gate', id: gate.id } as const, at: gate.middle })),
  );
};
