import { pageOptions, pageOrderOf, readerOption } from '../pageOrder.ts';
import type { Verb } from '../verb.ts';
import { writeSheet } from '../writeSheet.ts';
import { languageOption } from '../languageOption.ts';
import { phrase } from '../../phrases/phrase.ts';

/** `sheet`: the crew sheet as a PDF, or page by page as SVG or PNG; the same pages as on the screen. */
export const sheet: Verb = {
  name: 'sheet',
  does: phrase`prints the crew sheet`,
  places: ['SITE'],
  options: [
    ...pageOptions(phrase`else the larger plan, lists as more of them fits`),
    readerOption,
    languageOption,
  ],
  run: async (call, io) => {
    const order = pageOrderOf(call);
    return order.ok ? writeSheet(call.places[0] ?? '-', order.value, io) : order;
  },
};
