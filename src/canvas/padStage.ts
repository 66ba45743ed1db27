import type { Pad } from '../editor/view.ts';

/** The sheets of the pad, the undermost first: pictures under the drawing, the still drawing, what is live. */
export interface PadStage {
  readonly under: HTMLCanvasElement;
  readonly still: HTMLCanvasElement;
  readonly resize: (pad: Pad) => void;
  /** Paints what is live with the next frame, or puts its sheet away: one that is there costs even if it is blank. */
  readonly drawLive: (what: 'something' | 'nothing') => void;
  readonly close: () => void;
}

const sheetIn = (container: HTMLElement, sheet: 'under' | 'still' | 'live'): HTMLCanvasElement => {
  const canvas = document.createElement('canvas');
  canvas.dataset['sheet'] = sheet;
  canvas.style.cssText = 'position: absolute; left: 0; top: 0; transform-origin: 0 0;';
  // one that is moved is a layer of its own for the browser, so that a move paints nothing
  if (sheet !== 'live') canvas.style.willChange = 'transform';
  container.append(canvas);
  return canvas;
};

/** Clears a sheet as large as the pad and hands it out in CSS pixels. */
const paintedAnew = (
  canvas: HTMLCanvasElement,
  { width, height }: Pad,
): CanvasRenderingContext2D | null => {
  const density = window.devicePixelRatio || 1;
  const [across, down] = [Math.round(width * density), Math.round(height * density)];
  const context = canvas.getContext('2d');
  if (canvas.width !== across || canvas.height !== down) {
    // a canvas that gets a size is blank
    canvas.width = across;
    canvas.height = down;
  }
  // told each time: at another zoom of the browser as many pixels are another size
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  context?.setTransform(density, 0, 0, density, 0, 0);
  context?.clearRect(0, 0, width, height);
  return context;
};

/** Puts the sheets of the pad into an element; nothing is painted before they have a size. */
export const createPadStage = (
  container: HTMLElement,
  paintLive: (context: CanvasRenderingContext2D) => void,
): PadStage => {
  const under = sheetIn(container, 'under');
  const still = sheetIn(container, 'still');
  const live = sheetIn(container, 'live');
  let size: Pad = { width: 0, height: 0 };
  let frame = 0;
  const paint = (): void => {
    frame = 0;
    const context = live.hidden ? null : paintedAnew(live, size);
    if (context !== null) paintLive(context);
  };
  return {
    under,
    still,
    resize: (pad) => {
      size = pad;
    },
    drawLive: (what) => {
      live.hidden = what === 'nothing' || size.width === 0 || size.height === 0;
      if (!live.hidden && frame === 0) frame = requestAnimationFrame(paint);
    },
    close: () => {
      cancelAnimationFrame(frame);
      for (const sheet of [under, still, live]) sheet.remove();
    },
  };
};
