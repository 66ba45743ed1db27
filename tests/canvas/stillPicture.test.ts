import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { StillPicture, type Still } from '../../src/canvas/stillPicture.ts';
import { palettes } from '../../src/drawing/palettes.ts';
import type { Primitive } from '../../src/drawing/primitive.ts';

const noContext = new Proxy({}, { get: () => () => undefined, set: () => true });

/** A canvas of which is seen only how it lies. */
const sheet = () => {
  const style = { transform: '' };
  const canvas = { width: 0, height: 0, style, getContext: () => noContext };
  return { canvas: canvas as unknown as HTMLCanvasElement, style };
};

const fence: Primitive = {
  kind: 'polyline',
  points: [
    { x: 0, y: 0 },
    { x: 120, y: 60 },
  ],
  closed: false,
  pen: 'fence',
};

const still: Still = {
  groups: [[fence]],
  palette: palettes.day,
  system: 'feet',
  inch: 96,
  lettered: true,
  over: 'paper',
};

const pad = { width: 400, height: 300 };

let bit = 0;

beforeEach(() => {
  vi.stubGlobal('window', { devicePixelRatio: 1 });
  bit = 0;
  let now = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => (now += bit));
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

it('a drawing of another scale is not painted anew as if it were of the view that is to come', () => {
  const { canvas, style } = sheet();
  const picture = new StillPicture(canvas, () => undefined);
  const view = { scale: 1, x: 0, y: 200 };
  picture.show(still, view, pad);
  const close = { ...view, scale: 2 };
  // from here on each step takes long
  bit = 100;
  picture.rest(close);
  picture.place(close);
  expect(style.transform).toContain('scale(2)');
  // amid the drawing of this view
  picture.show({ ...still, palette: palettes.dark }, close, pad);
  picture.place(close);
  expect(style.transform).toContain('scale(2)');
  picture.close();
});

it('other colours are painted at once where the drawing is of the view', () => {
  const { canvas } = sheet();
  const picture = new StillPicture(canvas, () => undefined);
  const view = { scale: 1, x: 0, y: 200 };
  picture.show(still, view, pad);
  const painted = vi.spyOn(canvas, 'getContext');
  picture.show({ ...still, palette: palettes.dark }, view, pad);
  expect(painted).toHaveBeenCalledTimes(1);
  picture.close();
});
