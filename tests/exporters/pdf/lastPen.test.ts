import { expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { pens } from '../../../src/drawing/pens.ts';
import { lastPen } from '../../../src/exporters/pdf/lastPen.ts';

const stroke = (pen: Extract<Atom, { do: 'stroke' }>['pen']): Atom => ({
  do: 'stroke',
  pen,
  outline: [],
});
const fill: Atom = { do: 'fill', ink: 'gate', opacity: 1, outline: [] };

it('the last pen is that of the last stroke, also of one within a clip', () => {
  const clip: Atom = { do: 'clip', outline: [], atoms: [stroke(pens.frame), fill] };
  expect(lastPen([])).toBeNull();
  expect(lastPen([fill])).toBeNull();
  expect(lastPen([stroke(pens.thin), clip, fill])).toBe(pens.frame);
  expect(lastPen([clip, stroke(pens.thin)])).toBe(pens.thin);
});
