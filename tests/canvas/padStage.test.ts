import { afterEach, expect, it, vi } from 'vitest';
import { createPadStage } from '../../src/canvas/padStage.ts';

interface Sheet {
  readonly dataset: Record<string, string>;
  readonly style: Record<string, string>;
  readonly width: number;
  readonly height: number;
  readonly hidden: boolean;
}

/** A page that has nothing but sheets, and paints what waits for a frame when it is asked to. */
const page = () => {
  const sheets: Sheet[] = [];
  const waiting: (() => void)[] = [];
  const context = { setTransform: vi.fn(), clearRect: vi.fn() };
  vi.stubGlobal('document', {
    createElement: () => ({ dataset: {}, style: {}, getContext: () => context, remove: vi.fn() }),
  });
  vi.stubGlobal('requestAnimationFrame', (paint: () => void) => waiting.push(paint));
  const container = { append: (sheet: Sheet) => sheets.push(sheet) };
  return {
    container: container as unknown as HTMLElement,
    frame: () => waiting.splice(0).forEach((paint) => paint()),
    live: () => sheets.find(({ dataset }) => dataset['sheet'] === 'live'),
  };
};

const zoomTo = (density: number) => vi.stubGlobal('window', { devicePixelRatio: density });

afterEach(() => vi.unstubAllGlobals());

it('the live sheet lies on all of the pad at every zoom of the browser', () => {
  const { container, frame, live } = page();
  const stage = createPadStage(container, () => undefined);
  for (const [density, width, height] of [
    [1, 1000, 600],
    [2, 500, 300],
    [2, 700, 300],
    [1.25, 1120, 480],
  ] as const) {
    zoomTo(density);
    stage.resize({ width, height });
    stage.drawLive('something');
    frame();
    expect(live()).toMatchObject({
      width: width * density,
      height: height * density,
      style: { width: `${width}px`, height: `${height}px` },
    });
  }
});

it('the live sheet is put away while nothing is live, and painted once a frame', () => {
  const { container, frame, live } = page();
  const paint = vi.fn();
  const stage = createPadStage(container, paint);
  zoomTo(1);
  stage.drawLive('something');
  expect(live()?.hidden).toBe(true);
  stage.resize({ width: 100, height: 50 });
  stage.drawLive('something');
  stage.drawLive('something');
  frame();
  expect(paint).toHaveBeenCalledTimes(1);
  stage.drawLive('something');
  stage.drawLive('nothing');
  frame();
  expect(paint).toHaveBeenCalledTimes(1);
  expect(live()?.hidden).toBe(true);
});
