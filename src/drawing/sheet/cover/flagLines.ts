import type { Layout } from '../../../engine/layout.ts';
import { flagName } from '../../plan/drawFlags.ts';
import type { Block } from '../flow/block.ts';
import { subheading } from '../flow/heading.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { letters, lineSpacing } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';

/** So many flags that stop the work are told on the cover, a line each; the list has all in full. */
const mostStops = 3;
const height = letters.body * lineSpacing;

/** Flags of each level, of one and of more. */
const words = {
  stop: ['stop', 'stops'],
  settle: ['to settle', 'to settle'],
  caution: ['caution', 'cautions'],
} as const;
const levels = ['stop', 'settle', 'caution'] as const;

/** How many flags of each level stand, and the first that stop the work; `sheet` has the list of them. */
export const flagLines = (
  { flags }: Pick<Layout, 'flags'>,
  sheet: number | null,
  width: number,
): Block => {
  const counts = levels.flatMap((level) => {
    const count = flags.filter((flag) => flag.level === level).length;
    const [one, more] = words[level];
    return count === 0 ? [] : [`${count} ${count === 1 ? one : more}`];
  });
  const where = sheet === null ? '' : ` All are listed on sheet ${sheet}.`;
  const says = counts.length === 0 ? 'No flag stands.' : `${counts.join(', ')}.${where}`;
  const stops = flags.flatMap((flag, n) =>
    flag.level === 'stop' ? [`${flagName(n)} stop: ${flag.message}`] : [],
  );
  const told = stops.slice(0, mostStops).map((text) => ({
    height,
    atoms: lineOfText(text, 0, height / 2, { ink: 'stop', weight: 'bold', width }),
  }));
  return stackBlocks([subheading('Flags', width), ...paragraph(says, width), ...told]);
};
