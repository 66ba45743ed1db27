import { slack } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { groundWidth } from '../set/groundWidth.ts';
import { writer } from '../set/setCase.ts';
import { setOf } from '../set/setOf.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';
import { verdictWords } from '../../engine/set/verdictWords.ts';

/** Where a width was measured. */
const atWords = { top: phrase`at the top`, bottom: phrase`at the bottom` } as const;

const verdictFlag = (site: Site, { id }: GateLayout): GateFlag[] => {
  const gate = site.gates[id];
  const set = gate === undefined ? null : setOf(site, gate);
  if (set === null || set.governs.gap.verdict === 'holds') return [];
  const write = writer({ site });
  const { at, width, gap } = set.governs;
  const { verdict, by } = gap;
  const first = set.remedies[0];
  const enough = set.remedies.find((remedy) => remedy.enough) ?? first;
  const name = phrase`${gateName(site, id)} as it was set, ${write(width)} ${atWords[at]},`;
  if (verdict === 'may hold') {
    return [
      {
        level: 'settle',
        rule: 'set may hold',
        message: phrase`${name} may hold. ${first?.what ?? ''}`,
      },
    ];
  }
  const rule = `set ${verdict}`;
  return [
    {
      level: 'stop',
      rule,
      message: phrase`${name} is ${verdictWords[verdict]} by ${write(by)}. ${enough?.what ?? ''}`,
    },
  ];
};

const standsElsewhere = (site: Site, { id, stands }: GateLayout): GateFlag[] => {
  const asSet = site.gates[id]?.asSet ?? null;
  if (asSet === null || Math.abs(groundWidth(asSet) - stands) <= slack) return [];
  const write = writer({ site });
  const message = phrase`${gateName(site, id)} was set at ${write(groundWidth(asSet))}, for which there is no room between the posts as drawn: it is laid out at ${write(stands)}; measure the leg again.`;
  return [{ level: 'settle', rule: 'set without room', message }];
};

/** What comes of the posts that were set: a stop where a gate cannot hang, a question where it may. */
export const checkSet = (site: Site, laid: LaidLines): Flag[] =>
  Object.values(laid.gates).flatMap((gate) =>
    plantedAt(gate, [...verdictFlag(site, gate), ...standsElsewhere(site, gate)]),
  );
