import { writer } from '../../engine/set/setCase.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { AsSet } from '../../site/asSet.ts';
import type { Site } from '../../site/site.ts';
import type { Inches } from '../../units/inches.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A width that was set in the ground, inches, and what the ruler writes at it. */
export interface SetMark {
  readonly text: string;
  readonly width: Inches;
}

/** The widths between two posts that were set: one where top and bottom are alike, none unset. */
export const setMarks = (
  site: Pick<Site, 'lengths'>,
  asSet: Pick<AsSet, 'top' | 'bottom'> | null,
): readonly SetMark[] => {
  if (asSet === null) return [];
  const write = writer({ site });
  const { top, bottom } = asSet;
  if (bottom === null || Math.abs(top - bottom) <= slack) {
    return [{ text: phrase`set ${write(top)}`, width: top }];
  }
  return [
    { text: phrase`set, top ${write(top)}`, width: top },
    { text: phrase`set, bottom ${write(bottom)}`, width: bottom },
  ];
};
