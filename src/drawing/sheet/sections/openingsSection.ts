import type { GateLayout, Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { openingBar } from '../../opening/openingBar.ts';
import { setMarks } from '../../opening/setMarks.ts';
import { openingText } from '../../opening/openingText.ts';
import { gateKind, gatePosts, gateTitle } from '../../tables/gateKind.ts';
import { openingTable } from '../../tables/openingTable.ts';
import { workingTable } from '../../tables/workingTable.ts';
import { pipeSize } from '../../tables/pipeSize.ts';
import { rollText } from '../../tables/rollText.ts';
import { swingTexts } from '../../tables/swingTexts.ts';
import { gateLines } from './gateLines.ts';
import type { Block, Stack } from '../flow/block.ts';
import { heading, subheading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { oneBlock, under } from '../flow/stacks.ts';

/** A column from here on has bar and working side by side. */
const sideBySide = 9;
const between = 0.35;

const wholeTable = (stack: Stack): Block => stackBlocks([stack.head, ...stack.rows]);

const lineUnder = (gate: GateLayout, layout: Layout, site: Site): string => {
  const { posts } = gate;
  const leaves = gate.opening.terms.filter(({ role }) => role === 'leaf');
  const pipes =
    posts === null ? [] : [posts.start, posts.end].flatMap((id) => layout.posts[id] ?? []);
  const ods = pipes.map(({ tag, od }) => `${tag} ${pipeSize(od, site.lengths)} OD`).join(', ');
  const widths = leaves
    .map(({ planned }) => formatLength(planned, fineStyle(site.lengths)))
    .join(' and ');
  const stands = posts === null ? 'not placed: see its flag' : `posts ${ods}`;
  const of = leaves.length === 0 ? '' : `, ${leaves.length > 1 ? 'leaves' : 'leaf'} ${widths}`;
  return `${gateKind(gate)}${of}, ${stands}`;
};

const swingLine = (gate: GateLayout, layout: Layout): string => {
  const swing = swingTexts(gate, layout);
  if (swing !== null) return `Hinged at ${swing.hingedAt}, opens ${swing.opens}.`;
  const rolls = rollText(gate, layout);
  return rolls === null ? '' : `The gate ${rolls}.`;
};

const barOf = (gate: GateLayout, site: Site, width: number): Block => {
  const { nominal, asSet } = site.gates[gate.id] ?? { nominal: null, asSet: null };
  return openingBar(gate.opening, {
    width,
    style: site.lengths,
    ...(nominal === null ? {} : { nominal }),
    set: setMarks(site, asSet),
  });
};

/** One gate with its bar and its working, not broken. */
const gateCard = (gate: GateLayout, layout: Layout, site: Site, width: number): Block => {
  const target = openingText(gate.opening.target, site.lengths);
  const name = `${gateTitle(gate, site)}, ${gatePosts(gate, layout)}: hold ${target}`;
  const head = stackBlocks([
    subheading(name, width),
    ...paragraph(swingLine(gate, layout), width),
    ...paragraph(lineUnder(gate, layout, site), width, 'dimension'),
    ...gateLines(gate, site).flatMap((line) => paragraph(line, width)),
    { height: 0.1, atoms: [] },
  ]);
  const table = { ...workingTable(gate, site), title: '' };
  if (width < sideBySide) {
    const working = wholeTable(layTable(table, width));
    return stackBlocks([head, barOf(gate, site, width), { height: 0.1, atoms: [] }, working]);
  }
  const left = (width - between) * 0.54;
  const bar = barOf(gate, site, left);
  const working = wholeTable(layTable(table, width - between - left));
  const both = {
    height: Math.max(bar.height, working.height),
    atoms: [...bar.atoms, ...moveAtoms(working.atoms, left + between, 0)],
  };
  return stackBlocks([head, both]);
};

/** The opening schedule, then every gate with its opening bar and the working of its opening. */
export const openingsSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const gates = Object.values(layout.gates);
  if (gates.length === 0) return [];
  return [
    under(heading('Openings', width), layTable(openingTable(layout, site), width)),
    ...gates.map((gate) => oneBlock(gateCard(gate, layout, site, width), 0.32)),
  ];
};
