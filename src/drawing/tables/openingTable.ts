import type { GateLayout, Layout } from '../../engine/layout.ts';
import { distance } from '../../geometry/distance.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { heldTexts } from '../opening/heldTexts.ts';
import { openingText } from '../opening/openingText.ts';
import { gateKind, gateTitle } from './gateKind.ts';
import { rollText } from './rollText.ts';
import { swingTexts } from './swingTexts.ts';
import type { Column, Table } from './table.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`Gate`, align: 'left', share: 2 },
  { heading: phrase`Leaves`, align: 'right', share: 1 },
  { heading: phraseOf('heading')`Hold`, align: 'right', share: 1 },
  { heading: phraseOf('width')`From`, align: 'right', share: 1 },
  { heading: phraseOf('width')`To`, align: 'right', share: 1 },
  { heading: phrase`Hinged at`, align: 'left', share: 1 },
  { heading: phrase`Opens`, align: 'left', share: 2 },
  { heading: phrase`Centres`, align: 'right', share: 1 },
  { heading: phrase`Called`, align: 'right', share: 1 },
];

/** The widths of the leaves, those that are alike once. */
const leavesText = (widths: readonly string[]): string => {
  const [first = ''] = widths;
  const alike = widths.length > 1 && widths.every((width) => width === first);
  return alike ? `${widths.length} × ${first}` : widths.join(' + ');
};

const row = (gate: GateLayout, layout: Layout, site: Site): string[] => {
  const style = fineStyle(site.lengths);
  const write = (value: number): string => formatLength(inches(value), style);
  const held = heldTexts(gate.opening, style);
  const swing = swingTexts(gate, layout);
  const leaves = gate.opening.terms.filter(({ role }) => role === 'leaf');
  const placed = gate.posts === null ? phrase`not placed` : '';
  const nominal = site.gates[gate.id]?.nominal ?? null;
  return [
    `${gateTitle(gate, site)}, ${gateKind(gate)}`,
    leavesText(leaves.map(({ planned }) => write(planned))),
    openingText(gate.opening.target, site.lengths),
    held?.from ?? phrase`not for sure`,
    held?.to ?? phrase`not for sure`,
    swing?.hingedAt ?? '',
    swing?.opens ?? rollText(gate, layout) ?? placed,
    openingText(inches(distance(gate.start, gate.end)), site.lengths),
    nominal === null ? '' : write(nominal),
  ];
};

/** Every gate with the clear opening to hold, from inside face to inside face of its posts. */
export const openingTable = (layout: Layout, site: Site): Table => ({
  title: phrase`Opening schedule: clear widths between the inside faces of the gate posts`,
  columns,
  rows: Object.values(layout.gates).map((gate) => row(gate, layout, site)),
});
