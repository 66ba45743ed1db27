import { isMetric } from '../../units/isMetric.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** A sheet of paper, upright. Sizes in inches. */
export interface Paper {
  readonly label: string;
  readonly width: number;
  readonly height: number;
}

const mm = (value: number): number => value / 25.4;

/**
 * Papers that the sheets can be made for. Letter and Tabloid are sizes A and B, ANSI C and D and the
 * architectural sizes ARCH C and D are of ASME Y14.1; A4 to A1 are ISO 216.
 */
export const papers = {
  letter: { label: phraseOf('paper')`Letter`, width: 8.5, height: 11 },
  tabloid: { label: phrase`Tabloid`, width: 11, height: 17 },
  'ansi-c': { label: 'ANSI C', width: 17, height: 22 },
  'ansi-d': { label: 'ANSI D', width: 22, height: 34 },
  'arch-c': { label: 'ARCH C', width: 18, height: 24 },
  'arch-d': { label: 'ARCH D', width: 24, height: 36 },
  a4: { label: 'A4', width: mm(210), height: mm(297) },
  a3: { label: 'A3', width: mm(297), height: mm(420) },
  a2: { label: 'A2', width: mm(420), height: mm(594) },
  a1: { label: 'A1', width: mm(594), height: mm(841) },
} as const satisfies Record<string, Paper>;

export type PaperName = keyof typeof papers;
/** The paper that a yard is printed on unless another is chosen: A4 where it is measured in metres. */
export const usualPaper = (system: LengthSystem): PaperName => (isMetric(system) ? 'a4' : 'letter');

export type Orientation = 'portrait' | 'landscape';

/** The paper as it lies in front of the reader. */
export const laid = (name: PaperName, orientation: Orientation): Paper => {
  const { label, width, height } = papers[name];
  return orientation === 'portrait'
    ? { label, width, height }
    : { label: phrase`${label}, wide`, width: height, height: width };
};
