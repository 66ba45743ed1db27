import { usualPaper, type Orientation, type PaperName } from '../../drawing/sheet/papers.ts';
import type { Site } from '../../site/site.ts';
import type { SheetOptions } from '../../store/sheetOptions.ts';

/** The paper that was chosen for a site, and which way it lies where that was chosen too. */
export const paperOf = (
  { paper, orientation }: Pick<SheetOptions, 'paper' | 'orientation'>,
  { lengths }: Pick<Site, 'lengths'>,
): { readonly paper: PaperName; readonly orientation?: Orientation } => ({
  paper: paper === 'usual' ? usualPaper(lengths.system) : paper,
  ...(orientation === 'fitting' ? {} : { orientation }),
});
