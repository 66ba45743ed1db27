import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { accessibleReach, fireWidth, poweredGate } from '../../trade/routes.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import { clearPassage } from '../gate/clearPassage.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { plantedAt, saidOf, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';

type Say = (length: Inches) => string;

const accessible = (gate: Gate, say: Say): GateFlag[] => {
  const { low, high, source } = accessibleReach;
  const at = gate.latchHeight;
  const reach: GateFlag[] =
    at !== null && (at < low || at > high)
      ? [
          {
            level: 'settle',
            rule: 'latch out of reach',
            message: `the latch is ${say(at)} over the ground: on an accessible route expected ${say(low)} to ${say(high)} (${source.text}); gates of pools may differ.`,
          },
        ]
      : [];
  return [
    ...reach,
    {
      level: 'caution',
      rule: 'accessible route',
      message:
        'on an accessible route: room beside the latch, slope of the ground there and what stands out from the leaf are not looked at here; measure them (2010 ADA 404.2).',
    },
  ];
};

const forFire = (clear: Inches, say: Say): GateFlag[] =>
  clear >= fireWidth.length
    ? []
    : [
        {
          level: 'settle',
          rule: 'too narrow for fire engines',
          message: `${say(clear)} is clear with this gate open: for fire engines expected ${say(fireWidth.length)} at least (${fireWidth.source.text}).`,
        },
      ];

const flagsFor = (gate: Gate, layout: GateLayout, say: Say): GateFlag[] => [
  ...(gate.route === 'accessible' ? accessible(gate, say) : []),
  ...(gate.route === 'fire' ? forFire(clearPassage(gate, layout).clear, say) : []),
  ...(gate.powered
    ? [
        {
          level: 'caution' as const,
          rule: 'powered gate',
          message: `${poweredGate.text} (${poweredGate.source.text}).`,
        },
      ]
    : []),
];

/**
 * What gates on an accessible route or a road for fire engines, and gates that a motor moves, are compared
 * with; how wide an accessible one opens is told with its sweep.
 */
export const checkRoutes = (site: Site, laid: LaidLines): Flag[] => {
  const say: Say = (length) => formatLength(length, fineStyle(site.lengths));
  return Object.values<GateLayout>(laid.gates).flatMap((layout) => {
    const gate = site.gates[layout.id];
    return gate === undefined
      ? []
      : plantedAt(layout, saidOf(gateName(site, layout.id), flagsFor(gate, layout, say)));
  });
};
