import fc from 'fast-check';
import { expect, it } from 'vitest';
import { PageBytes } from '../../../src/exporters/pdf/pageBytes.ts';
import { PageState } from '../../../src/exporters/pdf/pageState.ts';

/** What a stroke is wished to be painted with, or such strokes within a part that ends. */
type Deed =
  | { readonly colour: string; readonly width: number; readonly dash: readonly number[] }
  | { readonly within: readonly Deed[] };

const stroke = fc.record({
  colour: fc.constantFrom('0. G\n', '1. 0. 0. RG\n', '0. 0. 1. RG\n'),
  width: fc.constantFrom(0.5, 1, 2),
  dash: fc.constantFrom([], [3], [3, 1]),
});

const { deeds } = fc.letrec<{ deeds: readonly Deed[] }>((tie) => ({
  deeds: fc.array(fc.oneof({ depthSize: 'small' }, stroke, fc.record({ within: tie('deeds') })), {
    maxLength: 6,
  }),
}));

/** What each stroke of a page is painted with, by what its operators say (ISO 32000-1, 8.4.2). */
const paintedWith = (content: string): string[] => {
  const painted: string[] = [];
  const saved: string[][] = [];
  let [colour = '', width = '', dash = ''] = ['', '', ''];
  for (const line of content.split('\n')) {
    if (line === 'q') saved.push([colour, width, dash]);
    else if (line === 'Q') [colour = '', width = '', dash = ''] = saved.pop() ?? [];
    else if (line === 'S') painted.push([colour, width, dash].join(' | '));
    else if (/ (G|RG)$/.test(line)) colour = line;
    else if (line.endsWith(' w')) width = line;
    else if (line.endsWith(' d')) dash = line;
  }
  return painted;
};

const write = (all: readonly Deed[], out: PageBytes, state: PageState): void => {
  for (const deed of all) {
    if ('within' in deed) {
      state.within(() => write(deed.within, out, state));
      continue;
    }
    state.tell('strokes', deed.colour);
    state.pen(deed.width, deed.dash, 1);
    out.text('S\n');
  }
};

const contentOf = (all: readonly Deed[]): string => {
  const out = new PageBytes();
  write(all, out, new PageState(out));
  return Buffer.from(out.written()).toString('latin1');
};

/** What strokes were wished to be painted with, one after the other. */
const wished = (all: readonly Deed[]): string[] =>
  all.flatMap((deed) => {
    if ('within' in deed) return wished(deed.within);
    const dash = deed.dash.map((length) => `${length}.`).join(' ');
    const width = Number.isInteger(deed.width) ? `${deed.width}.` : `${deed.width}`;
    return [[deed.colour.trim(), `${width} w`, `[${dash}] 0. d`].join(' | ')];
  });

it('[X1] a page paints all as it was wished, though nothing is said twice', () => {
  fc.assert(
    fc.property(deeds, (all) => {
      expect(paintedWith(contentOf(all))).toEqual(wished(all));
    }),
  );
});

it('[X1] says a colour, a width and dashes once for strokes that are alike', () => {
  const alike = { colour: '0. G\n', width: 1, dash: [3] };
  expect(contentOf([alike, { ...alike, dash: [3] }])).toBe('0. G\n1. w\n[3.] 0. d\nS\nS\n');
});
