import type { FenceSpec } from '../../site/fenceSpec.ts';
import { infillWord, theInfill } from '../../site/infillWord.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { shortStyle } from './shortStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Where a post ends against the top of what hangs from it; `above` in inches, negative below. */
const endText = (above: number, noun: string, style: LengthStyle): string => {
  if (above === 0) return phrase`level with the top of ${noun}`;
  const by = formatLength(inches(Math.abs(above)), shortStyle(style));
  return above > 0
    ? phrase`${by} above the top of ${noun}`
    : phrase`${by} below the top of ${noun}`;
};

const specText = (spec: FenceSpec, style: LengthStyle): string => {
  const height = formatLength(spec.fabricHeight, style);
  const [noun, own] = [infillWord(spec.infill), theInfill(spec.infill)];
  const line = endText(spec.lineAbove, own, style);
  const terminal = endText(spec.terminalAbove, own, style);
  return phrase`${noun} ${height} high; line posts end ${line}, all others ${terminal}.`;
};

/**
 * How high the fence of a site stands, one text for each of the specs that its lines are built by;
 * where there are several each says whose it is. Lines whose spec the site lacks say nothing.
 */
export const specTexts = ({ lines, specs, lengths }: Site): string[] => {
  const all = Object.values(lines);
  const used = new Set(all.map(({ spec }) => spec));
  return [...used].flatMap((id) => {
    const spec = specs[id];
    if (spec === undefined) return [];
    const own = all.filter((line) => line.spec === id);
    const names = own.map(({ label }) => label.trim() || phrase`Fence line`).join(', ');
    return [`${used.size === 1 ? phrase`Fence` : names}: ${specText(spec, lengths)}`];
  });
};
