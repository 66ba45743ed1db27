import type { LineId, SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Layout, LineLayout } from '../layout.ts';

/** The first line of a build, and the longest bay of any of its lines, inches. */
export interface LongestBay {
  readonly line: LineId;
  readonly bay: Inches;
}

/** One by one: of thousands of bays flat lists take many times as long. */
const longestOf = ({ runs }: LineLayout): number => {
  let most = 0;
  for (const { spaces } of runs) {
    for (const { kind, length } of spaces) if (kind === 'bay' && length > most) most = length;
  }
  return most;
};

/** The longest bay of each build that has a bay on a site. */
export const longestBays = (
  site: Site,
  { lines }: Pick<Layout, 'lines'>,
): ReadonlyMap<SpecId, LongestBay> => {
  const found = new Map<SpecId, LongestBay>();
  for (const line of Object.values<LineLayout>(lines)) {
    const spec = site.lines[line.id]?.spec;
    const bay = longestOf(line);
    if (spec === undefined || bay === 0) continue;
    const known = found.get(spec);
    found.set(spec, {
      line: known?.line ?? line.id,
      bay: inches(Math.max(bay, known?.bay ?? 0)),
    });
  }
  return found;
};
