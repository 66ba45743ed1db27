import type { FaceLetters } from './faceLetters.ts';
import type { PageBytes } from './pageBytes.ts';
import type { PageState } from './pageState.ts';
import { settled } from './settled.ts';

/** PDF units in an inch of paper. */
export const inch = 72;

/** What a page is written with. */
export interface PageInk {
  readonly out: PageBytes;
  /** What was told of colours, pens and fonts. */
  readonly state: PageState;
  /** Of the page, inches: PDF counts upwards. */
  readonly height: number;
  readonly letters: Readonly<Record<'regular' | 'bold', FaceLetters>>;
  /** What the document calls the state in which fills have an opacity. */
  readonly faded: (opacity: number) => string;
}

/** Writes a place of the paper in units of the page. */
export const writePlace = ({ out, height }: PageInk, x: number, y: number): void => {
  out.number(settled(x) * inch);
  out.number((height - settled(y)) * inch);
};
