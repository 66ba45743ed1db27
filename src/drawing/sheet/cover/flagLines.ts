import type { Layout } from '../../../engine/layout.ts';
import { flagName } from '../../plan/drawFlags.ts';
import type { Block } from '../flow/block.ts';
import { subheading } from '../flow/heading.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { letters, lineSpacing } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** So many flags that stop the work are told on the cover, a line each; the list has all in full. */
const mostStops = 3;
const height = letters.body * lineSpacing;

/** Flags of each level, of one and of more. */
const words = {
  stop: (count: number) => (count === 1 ? phrase`1 stop` : phrase`${count} stops`),
  settle: (count: number) => phrase`${count} to settle`,
  caution: (count: number) => (count === 1 ? phrase`1 caution` : phrase`${count} cautions`),
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
    return count === 0 ? [] : [words[level](count)];
  });
  const where = sheet === null ? '' : phrase` All are listed on sheet ${sheet}.`;
  const says = counts.length === 0 ? phrase`No flag stands.` : `${counts.join(', ')}.${where}`;
  const stops = flags.flatMap((flag, n) =>
    flag.level === 'stop' ? [phrase`${flagName(n)} stop: ${flag.message}`] : [],
  );
  const told = stops.slice(0, mostStops).map((text) => ({
    height,
    atoms: lineOfText(text, 0, height / 2, { ink: 'stop', weight: 'bold', width }),
  }));
  return stackBlocks([subheading(phrase`Flags`, width), ...paragraph(says, width), ...told]);
};
