import { Layer } from 'konva/lib/Layer.js';
import { Shape } from 'konva/lib/Shape.js';
import { Stage } from 'konva/lib/Stage.js';
import type { Pad } from '../editor/view.ts';

type PaintOn = (context: CanvasRenderingContext2D) => void;

/** The two sheets of the pad: the still drawing, and over it what changes with each move of the hand. */
export interface PadStage {
  readonly resize: (pad: Pad) => void;
  /** Paints both with the next frame, or the still drawing alone: a sheet that is painted costs even if it is blank. */
  readonly draw: (which: 'both' | 'still') => void;
  readonly close: () => void;
}

const layerWith = (paint: PaintOn): Layer => {
  const layer = new Layer({ listening: false });
  // one shape that paints by itself: a node for each post is ten times slower
  const shape = new Shape({
    listening: false,
    perfectDrawEnabled: false,
    sceneFunc: () => {
      const context = layer.getNativeCanvasElement().getContext('2d');
      if (context !== null) paint(context);
    },
  });
  layer.add(shape);
  return layer;
};

/** Puts the sheets of the pad into an element; nothing is painted before they have a size. */
export const createPadStage = (
  container: HTMLDivElement,
  { still, live }: { readonly still: PaintOn; readonly live: PaintOn },
): PadStage => {
  const stage = new Stage({ container, width: 0, height: 0, listening: false });
  const [under, over] = [layerWith(still), layerWith(live)];
  stage.add(under, over);
  return {
    resize: ({ width, height }) => {
      if (stage.width() !== width || stage.height() !== height) stage.size({ width, height });
    },
    draw: (which) => {
      under.batchDraw();
      if (which === 'both') over.batchDraw();
    },
    close: () => stage.destroy(),
  };
};
