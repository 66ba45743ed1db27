import { useEffect, useLayoutEffect, useRef, type RefObject } from 'react';
import { explode } from '../drawing/explode.ts';
import type { Primitive } from '../drawing/primitive.ts';
import { toScreen, type Pad } from '../editor/view.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { View } from '../store/view.ts';
import { padProjection } from './padProjection.ts';
import { createPadStage, type PadStage } from './padStage.ts';
import { paintAtoms } from './paintAtoms.ts';
import { paintCross } from './paintCross.ts';
import { paintUnder, type Under } from './paintUnder.ts';
import { newSnapshot, placeSnapshot, type Snapshot } from './snapshot.ts';
import { StillPicture, type Still } from './stillPicture.ts';
import { useFontsReady } from './useFontsReady.ts';
import { useLatest } from './useLatest.ts';

/** The pad is at rest when the view has stood still for this long, in milliseconds. */
const rest = 140;

/** The still drawing, and the pictures that lie under it. */
export type Seen = Omit<Still, 'lettered' | 'over'> & Pick<Under, 'pictures'>;

/** The view of the pad, as one may watch it. */
export interface WatchedView {
  readonly now: () => View;
  /** Calls `heard` after every change; gives back how to be heard of no more. */
  readonly watch: (heard: () => void) => () => void;
}

/** What is shown on the pad. */
export interface Shown {
  readonly still: Seen;
  /** What is shown over the still drawing and changes with each move, at a scale of CSS pixels to the inch. */
  readonly live: (scale: number) => readonly Primitive[];
  /** Where the keys' crosshair is; null while the keys are not drawing. */
  readonly cross: SitePoint | null;
  readonly view: WatchedView;
}

interface Frame {
  /** What says in its `data-view` how the pad is seen. */
  readonly pad: RefObject<HTMLDivElement | null>;
  readonly paper: RefObject<HTMLDivElement | null>;
  readonly size: Pad;
}

/** What is painted, and by what. */
interface Painter {
  readonly stage: PadStage;
  readonly picture: StillPicture;
  under: Snapshot | null;
}

const paintLive = (
  context: CanvasRenderingContext2D,
  { live, cross, view, still: { palette, inch } }: Shown,
): void => {
  const now = view.now();
  const atoms = explode(live(now.scale), padProjection(now, inch));
  paintAtoms(context, atoms, { palette, scale: inch });
  if (cross !== null) paintCross(context, toScreen(now, cross), palette.selected);
};

/** Lays the pictures where the view has them, and paints what is live. */
const draw = (painter: Painter, { live, cross, view }: Shown): void => {
  const now = view.now();
  painter.picture.place(now);
  if (painter.under !== null) placeSnapshot(painter.under, now);
  const blank = cross === null && live(now.scale).length === 0;
  painter.stage.drawLive(blank ? 'nothing' : 'something');
};

const createPainter = (paper: HTMLDivElement, latest: RefObject<Shown>): Painter => {
  const stage = createPadStage(paper, (context) => paintLive(context, latest.current));
  const picture = new StillPicture(stage.still, () => draw(painter, latest.current));
  const painter: Painter = { stage, picture, under: null };
  return painter;
};

const takeUnder = (painter: Painter, under: Under, view: View, size: Pad): void => {
  const { under: sheet } = painter.stage;
  sheet.hidden = under.pictures.length === 0;
  if (sheet.hidden || size.width === 0 || size.height === 0) {
    painter.under = null;
    return;
  }
  painter.under = newSnapshot(sheet, view, size);
  paintUnder(painter.under, under);
};

/** Says in an element's data how the pad is seen. */
const say = (element: HTMLElement | null, { scale, x, y }: View): void => {
  if (element !== null) element.dataset['view'] = `${scale} ${x} ${y}`;
};

/**
 * Paints the pad: what is still from a picture that is moved while the view moves and taken anew at rest, what is
 * live with every frame. A change of the view alone passes React by.
 */
export const usePad = ({ pad, paper, size }: Frame, shown: Shown): void => {
  const latest = useLatest(shown);
  const painter = useRef<Painter | null>(null);
  const lettered = useFontsReady();
  const { still, view } = shown;
  const { groups, palette, system, inch, pictures } = still;
  const over = pictures.length === 0 ? 'paper' : 'pictures';

  useLayoutEffect(() => {
    if (paper.current === null) return undefined;
    const made = createPainter(paper.current, latest);
    painter.current = made;
    return () => {
      made.picture.close();
      made.stage.close();
      painter.current = null;
    };
  }, [paper, latest]);

  useLayoutEffect(() => {
    const { current } = painter;
    if (current === null) return;
    current.stage.resize(size);
    takeUnder(current, { pictures, palette }, view.now(), size);
  }, [pictures, palette, size, view]);

  useLayoutEffect(() => {
    const { current } = painter;
    current?.picture.show({ groups, palette, system, inch, lettered, over }, view.now(), size);
  }, [groups, palette, system, inch, lettered, over, size, view]);

  useLayoutEffect(() => {
    if (painter.current !== null) draw(painter.current, latest.current);
  });

  useEffect(() => {
    let resting: number | undefined;
    const heard = (): void => {
      const { current } = painter;
      if (current === null) return;
      say(pad.current, view.now());
      draw(current, latest.current);
      window.clearTimeout(resting);
      resting = window.setTimeout(() => {
        takeUnder(current, latest.current.still, view.now(), size);
        current.picture.rest(view.now());
        draw(current, latest.current);
      }, rest);
    };
    // a view that was set while nobody listened yet
    heard();
    const leave = view.watch(heard);
    return () => {
      leave();
      window.clearTimeout(resting);
    };
  }, [pad, view, size, latest]);
};
