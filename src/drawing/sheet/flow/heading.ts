import { segmentsOutline } from '../../explode/polylineOutline.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Block } from './block.ts';

/** The name of a part of a sheet, over a strong rule across its column. */
export const heading = (text: string, width: number): Block => ({
  height: 0.36,
  atoms: [
    ...lineOfText(text, 0, 0.13, { size: letters.heading, weight: 'bold', width }),
    {
      do: 'stroke',
      pen: { ink: 'gate', width: 0.022, dash: [] },
      outline: segmentsOutline([
        [
          { x: 0, y: 0.28 },
          { x: width, y: 0.28 },
        ],
      ]),
    },
  ],
});

/** The name of a smaller part, without a rule. */
export const subheading = (text: string, width: number): Block => ({
  height: 0.27,
  atoms: lineOfText(text, 0, 0.12, { size: letters.strong, weight: 'bold', width }),
});
