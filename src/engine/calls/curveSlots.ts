import { inches } from '../../units/inches.ts';
import { fromDegrees } from '../../units/radians.ts';
import { read } from '../../units/parsed.ts';
import { curveLabels, type CurveLabel, type LabelWord } from './curveLabels.ts';
import type { Figure } from './figure.ts';

/** What the figures of a curve are: lengths in inches, the others in radians. */
export type CurveSlot =
  | 'radius'
  | 'delta'
  | 'degree'
  | 'arc'
  | 'chord'
  | 'tangent'
  | 'chord bearing'
  | 'radial bearing'
  | 'tangent bearing';

export interface CurveSlots {
  readonly values: ReadonlyMap<CurveSlot, number>;
  /** Figures that found no place. */
  readonly unused: readonly Figure[];
}

const lengthSlots: Readonly<Record<Exclude<CurveLabel, 'degree'>, CurveSlot>> = {
  radial: 'radius',
  radius: 'radius',
  delta: 'arc',
  arc: 'arc',
  chord: 'chord',
  tangent: 'tangent',
};

/** `125.00 foot radius`; not the `chord` of `radius 50 chord 30`. */
const trailing = /^[- ](radius|arc|chord)\b(?! ?(?:of|is|[=:])? ?\d)/;
/** `5° curve`: how sharp it is, by its degree, and not how far it turns. */
const degreeOf = /^[- ](?:degree )?curve(?![a-z])/;
/** Whether nothing but a sign stands between what names a number and the number. */
const adjacent = /^[ =:,-]*(?:of |is )?$/;

const labelOf = (text: string, figure: Figure, words: readonly LabelWord[]): LabelWord | null => {
  const { at, end } = figure;
  if (figure.kind === 'angle' && degreeOf.test(text.slice(end)))
    return { label: 'degree', at, end };
  const word = words.findLast((one) => one.end <= at) ?? null;
  const label = trailing.exec(text.slice(end))?.[1];
  if (label === undefined || adjacent.test(text.slice(word?.end ?? 0, at))) return word;
  return { label: label === 'radius' || label === 'arc' ? label : 'chord', at, end };
};

const lengthSlot = (word: LabelWord | null, before: Figure | undefined): CurveSlot | null => {
  if (word === null) return before?.kind === 'bearing' ? 'chord' : 'arc';
  return word.label === 'degree' ? null : lengthSlots[word.label];
};

const slotOf = (
  figure: Figure,
  word: LabelWord | null,
  before: Figure | undefined,
): CurveSlot | null => {
  if (figure.kind === 'length') return lengthSlot(word, before);
  if (figure.kind === 'angle') return word?.label === 'degree' ? 'degree' : 'delta';
  if (word?.label === 'radial' || word?.label === 'radius') return 'radial bearing';
  return word?.label === 'tangent' ? 'tangent bearing' : 'chord bearing';
};

const valueOf = (figure: Figure): number => {
  if (figure.kind === 'length') return figure.length;
  if (figure.kind === 'number') return figure.value;
  const angle = figure.kind === 'bearing' ? figure.azimuth : figure.angle;
  return angle.ok ? angle.value : NaN;
};

/** A bare number as what it is by the word or the bearing right before it; null where there is none. */
const named = (
  figure: Figure,
  word: LabelWord | null,
  { text, before, bare }: { text: string; before: Figure | undefined; bare: number },
): Figure | null => {
  if (figure.kind !== 'number') return figure;
  const { at, end, value } = figure;
  const from = Math.max(word?.end ?? 0, before?.kind === 'bearing' ? before.end : 0);
  if (from === 0 || !adjacent.test(text.slice(from, at))) return null;
  if (word?.label === 'delta' || word?.label === 'degree')
    return { kind: 'angle', at, end, angle: read(fromDegrees(value)) };
  return { kind: 'length', at, end, length: inches(value * bare) };
};

/**
 * Gives each figure of a curve its place by the word before it, such as `radius of 125.00 feet`, or right
 * after it, such as `125.00 foot radius`. A length after the bearing of a chord is that chord; one whose
 * place is taken, and one without a word, is the arc. `bare` is the inches of a number without a unit.
 */
export const curveSlots = (text: string, figures: readonly Figure[], bare: number): CurveSlots => {
  const words = curveLabels(text);
  const values = new Map<CurveSlot, number>();
  const unused: Figure[] = [];
  figures.forEach((told, n) => {
    const word = labelOf(text, told, words);
    const before = figures[n - 1];
    const figure = named(told, word, { text, before, bare });
    if (figure === null) return;
    const slot = slotOf(figure, word, before);
    const spare = figure.kind === 'length' && slot !== null && values.has(slot) ? 'arc' : slot;
    if (spare === null || values.has(spare)) unused.push(figure);
    else values.set(spare, valueOf(figure));
  });
  return { values, unused };
};
