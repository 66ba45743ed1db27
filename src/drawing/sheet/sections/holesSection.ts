import type { Layout, LineLayout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { packPieces } from '../../tape/packPieces.ts';
import { tapeLevels } from '../../tape/tapeLevels.ts';
import type { TapePiece } from '../../tape/tapePiece.ts';
import { tapeFold, tapeMargin, tapeStrip, type TapeStrip } from '../../tape/tapeStrip.ts';
import { holeTable } from '../../tables/holeTable.ts';
import type { Block, Stack } from '../flow/block.ts';
import { heading, subheading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { oneBlock, under } from '../flow/stacks.ts';

/**
 * Paper inches for an inch of tape on a sheet: a bay of 10 ft is 0.6 in, or 1.2 in at most; less
 * only where one bay alone is longer than a row.
 */
const sheetScale = 0.6 / 120;
const mostScale = 1.2 / 120;

/** A strip without gates needs no room for their names. */
const raised = ({ atoms, height, gates }: TapeStrip): Block => {
  const spare = gates.length > 0 ? 0 : tapeLevels.tags - 0.12;
  return { atoms: moveAtoms(atoms, 0, -spare), height: height - spare };
};

/** A strip as a block, with what it had no room to write under it. */
const stripBlock = (
  pieces: readonly TapePiece[],
  { site, layout, width }: { site: Site; layout: Layout; width: number },
): Block => {
  const { lengths: style } = site;
  const how = { width, style, mostScale };
  const strip = tapeStrip(site, layout, pieces, how);
  if (strip.left.length === 0) return raised(strip);
  const rest = paragraph(`Also here: ${strip.left.join('; ')}.`, width, 'dimension');
  return stackBlocks([raised(strip), ...rest]);
};

const lineStacks = (line: LineLayout, site: Site, layout: Layout, width: number): Stack[] => {
  const hook = site.lines[line.id]?.hook ?? 'start';
  const capacity = (width - 2 * tapeMargin) / sheetScale;
  const rows = packPieces(line.runs, hook, { capacity, fold: tapeFold / sheetScale });
  const name = site.lines[line.id]?.label.trim() || 'Fence line';
  const called = subheading(`${name}: each tape is hooked at its claw`, width);
  const strips = rows.map((pieces) => stripBlock(pieces, { site, layout, width }));
  return [
    ...strips.map((strip, n) =>
      n === 0 ? oneBlock(stackBlocks([called, strip]), 0.3) : oneBlock(strip, 0.12),
    ),
    { ...layTable(holeTable(line, layout, site), width), gap: 0.24 },
  ];
};

/** Every fence line unrolled as a tape, and the table of its holes. */
export const holesSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const lines = Object.values(layout.lines).filter(({ runs }) => runs.length > 0);
  const [first, ...rest] = lines.flatMap((line) => lineStacks(line, site, layout, width));
  if (first === undefined) return [];
  return [under(heading('Tapes and holes', width), first), ...rest];
};
