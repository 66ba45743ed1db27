import type { SitePoint } from '../../geometry/point.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A flag of one gate, planted in the middle of its opening unless it has a place of its own. */
export type GateFlag = Pick<Flag, 'level' | 'rule' | 'message' | 'mend'> & {
  readonly at?: SitePoint;
};

/** The same flags, each said of its gate by name. */
export const saidOf = (name: string, flags: readonly GateFlag[]): GateFlag[] =>
  flags.map((flag) => ({ ...flag, message: phrase`${name}: ${flag.message}` }));

/** The flags of a gate, each on the gate and at its place. */
export const plantedAt = (gate: GateLayout, flags: readonly GateFlag[]): Flag[] =>
  flags.map(({ level, rule, message, mend, at = gate.middle }) => ({
    level,
    rule,
    place: { kind: 'gate', id: gate.id },
    at,
    message,
    ...(mend === undefined ? {} : { mend }),
  }));
