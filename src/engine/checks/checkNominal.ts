import { spot } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import { gapAt, type Gap } from '../gate/gapAt.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';
import { verdictWords } from '../../engine/set/verdictWords.ts';

const caught: Readonly<Record<Gap['verdict'], string>> = {
  holds: phrase`and catch`,
  'may hold': phrase`and may not catch`,
  'too narrow': phrase`and not catch`,
  'too wide': phrase`and not catch`,
};

const setThere = ({ opening }: GateLayout, nominal: Inches, write: (l: number) => string) => {
  const { planned, verdict, by } = gapAt(opening, nominal);
  const latches = opening.terms.filter(({ spread }) => spread === 'catch').length;
  if (latches === 0) return phrase`it would be ${verdictWords[verdict]} by ${write(by)}`;
  const missing = by > 0 ? phrase`: ${verdictWords[verdict]} by ${write(by)}` : '';
  if (planned < 0)
    return phrase`the leaves would be ${write(-planned)} too wide to go in${missing}`;
  const stand = phrase`stand ${write(planned / latches)} open ${caught[verdict]}${missing}`;
  return latches > 1 ? phrase`each latch would ${stand}` : phrase`its latch would ${stand}`;
};

const calledOtherwise = (gate: GateLayout, site: Site): GateFlag[] => {
  const nominal = site.gates[gate.id]?.nominal ?? null;
  const { target } = gate.opening;
  if (nominal === null || Math.abs(nominal - target) < spot) return [];
  const write = (length: number): string => formatLength(inches(length), fineStyle(site.lengths));
  const message = phrase`${gateName(site, gate.id)} is called ${write(nominal)} but its opening is ${write(target)}: set at the nominal ${write(nominal)}, ${setThere(gate, nominal, write)}.`;
  return [{ level: 'settle', rule: 'called otherwise than its opening', message }];
};

/** A gate that is called otherwise than its opening: what it would come to if it were set as called. */
export const checkNominal = (site: Site, laid: LaidLines): Flag[] =>
  Object.values(laid.gates).flatMap((gate) => plantedAt(gate, calledOtherwise(gate, site)));
