import type { Layout, Run } from '../../engine/layout.ts';
import { distance } from '../../geometry/distance.ts';
import { arcOf } from '../../geometry/track.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Primitive } from '../primitive.ts';
import type { ChainStyle } from './drawChain.ts';
import { runName } from './runName.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * What a curved run is set out by, on a dimension line inside the curve, on the other side of its chord:
 * chord, middle ordinate, radius and length along it; where that is too long, the chord alone. Where
 * its posts stand is told in its table. None for a straight run.
 */
export const drawChord = (
  run: Run,
  layout: Layout,
  { style, off, tapes }: ChainStyle,
): readonly Primitive[] => {
  const arc = arcOf(run);
  if (arc === null) return [];
  const write = (length: number): string => formatLength(inches(length), style);
  const chord = phrase`chord ${write(distance(run.start, run.end))}`;
  const rest = phrase`middle ordinate ${write(Math.abs(run.bow))}, R ${write(arc.radius)}, ${write(run.length)} along it`;
  const name = runName(run, layout);
  return [
    {
      kind: 'dimension chain',
      points: [run.start, run.end],
      texts: [`${chord}, ${rest}`],
      total: null,
      off: run.bow > 0 ? -Math.abs(off) : Math.abs(off),
      groups: [{ from: 0, to: 1, text: chord }],
      name,
      ...(tapes === undefined ? {} : { elsewhere: phrase`see tape ${name}` }),
    },
  ];
};
