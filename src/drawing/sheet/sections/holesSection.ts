import type { Layout, LineLayout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { packPieces } from '../../tape/packPieces.ts';
import { tapeLevels } from '../../tape/tapeLevels.ts';
import type { TapePiece } from '../../tape/tapePiece.ts';
import { tapeFold, tapeMargin, tapeStrip, type TapeStrip } from '../../tape/tapeStrip.ts';
import { aboveGround } from '../../tables/aboveGround.ts';
import { curveTables } from '../../tables/curveTables.ts';
import { holeTable } from '../../tables/holeTable.ts';
import { slopeTexts } from '../../tables/slopeTexts.ts';
import { specTexts } from '../../tables/specTexts.ts';
import { withoutColumns } from '../../tables/withoutColumns.ts';
import { type Block, nothing, type Stack } from '../flow/block.ts';
import { heading, subheading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { loose, under } from '../flow/stacks.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A site, its layout and the width of the column that they are set in, paper inches. */
interface Setting {
  readonly site: Site;
  readonly layout: Layout;
  readonly width: number;
}

/**
 * Paper inches for an inch of tape on a sheet: a bay of 10 ft is 0.6 in, or 1.2 in at most; less
 * only where one bay alone is longer than a row.
 */
const sheetScale = 0.6 / 120;
const mostScale = 1.2 / 120;

/** Clear over and under the rows of holes, which are many; paper inches. */
const rowPad = 0.03;

/** Paper inches that the heights of a profile should take. */
const profileHeight = 1;

/** Of a plan that no tape checks: said where the holes are, and not in a section of its own. */
const sketched = phrase`The plan is as it was sketched: nothing in it was taped.`;
const reckoned = phrase`Post lengths are reckoned for posts that stand on the bottom of the hole.`;
const byTheOpening = phrase`Set the first gate post by the tape, the other by the opening to hold: the opening governs.`;

const space = (height: number): Block => ({ ...nothing, height });

/** A strip without gates and closed ground needs no room for their names. */
const raised = ({ atoms, height, gates, closed }: TapeStrip): Block => {
  const spare = gates.length + closed.length > 0 ? 0 : tapeLevels.tags - 0.12;
  return { atoms: moveAtoms(atoms, 0, -spare), height: height - spare };
};

/** A strip as a block, with what it had no room to write under it. */
const stripBlock = (pieces: readonly TapePiece[], { site, layout, width }: Setting): Block => {
  const { lengths: style } = site;
  const how = { width, style, mostScale, profile: profileHeight, otherEnd: 'shown' } as const;
  const strip = tapeStrip(site, layout, pieces, how);
  if (strip.left.length === 0) return raised(strip);
  const rest = paragraph(phrase`Also here: ${strip.left.join('; ')}.`, width, 'dimension');
  return stackBlocks([raised(strip), ...rest]);
};

/** The rows of tape of a line, kept together where they can be. */
const stripStack = (line: LineLayout, setting: Setting): Stack => {
  const { site, width } = setting;
  const hook = site.lines[line.id]?.hook ?? 'start';
  const capacity = (width - 2 * tapeMargin) / sheetScale;
  const rows = packPieces(line.runs, hook, { capacity, fold: tapeFold / sheetScale });
  const label = site.lines[line.id]?.label.trim() || phrase`Fence line`;
  const name = phrase`${label}: each tape hooked at its claw, lighter figures from its other end`;
  const strips = rows.map((pieces) => stripBlock(pieces, setting));
  return {
    head: subheading(name, width),
    again: subheading(phrase`${name}, continued`, width),
    rows: strips.map((strip, n) => (n === 0 ? strip : stackBlocks([space(0.12), strip]))),
    gap: 0.3,
  };
};

/** The holes of a line in the groups of their stretches, which say what run and stretch are. */
const holeStack = (line: LineLayout, { site, layout, width }: Setting): Stack => {
  const text = aboveGround(line, layout, site);
  const said = text === null ? [] : (['above ground'] as const);
  const table = withoutColumns(holeTable(line, layout, site), ['run', 'stretch', ...said]);
  const { head, ...rest } = layTable(table, width, rowPad);
  const over = text === null ? [] : [...paragraph(text, width), space(0.08)];
  return { ...rest, head: stackBlocks([...over, head]), gap: 0.24 };
};

/** How a line lies on sloping ground, where it does. */
const slopeStack = (line: LineLayout, { site, layout, width }: Setting): Stack[] => {
  const texts = slopeTexts(line, layout, site);
  if (texts.length === 0) return [];
  const name = site.lines[line.id]?.label.trim() || phrase`Fence line`;
  const rows = texts.flatMap((text) => paragraph(text, width));
  return [loose(subheading(phrase`Slopes of ${name}`, width), rows, 0.14)];
};

/** What each curve of a line is set out by. */
const curves = (line: LineLayout, { site, layout, width }: Setting): Stack[] =>
  curveTables(line, layout, site).map(({ text, table }) => {
    const { head, ...rest } = layTable(table, width);
    return {
      ...rest,
      head: stackBlocks([...paragraph(text, width), space(0.08), head]),
      gap: 0.24,
    };
  });

const hasGate = ({ runs }: LineLayout): boolean =>
  runs.some(({ spaces }) => spaces.some(({ kind }) => kind === 'gate'));

/** Every fence line unrolled as a tape, and the table of its holes. */
export const holesSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const setting = { site, layout, width };
  const lines = Object.values(layout.lines).filter(({ runs }) => runs.length > 0);
  const warned = lines.find(hasGate);
  const warning = stackBlocks([...paragraph(byTheOpening, width), space(0.1)]);
  const [first, ...rest] = lines.flatMap((line): Stack[] => {
    const holes = holeStack(line, setting);
    const set = line === warned ? under(warning, holes) : holes;
    return [stripStack(line, setting), ...slopeStack(line, setting), set, ...curves(line, setting)];
  });
  if (first === undefined) return [];
  const measured = layout.survey.stands === 'sketched' ? [sketched] : [];
  const spec = paragraph([...specTexts(site), reckoned, ...measured].join(' '), width);
  const head = stackBlocks([heading(phrase`Tapes and holes`, width), ...spec, space(0.12)]);
  return [under(head, first), ...rest];
};
