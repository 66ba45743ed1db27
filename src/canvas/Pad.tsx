import { useEffect, useRef } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore.js';
import type { Node } from 'konva/lib/Node.js';
import { explode } from '../drawing/explode.ts';
import type { Primitive } from '../drawing/primitive.ts';
import type { Touch } from '../editor/hit.ts';
import type { Input } from '../editor/input.ts';
import { panBy, toGround, toScreen, toSite, zoomAt, type Pad as PadSize } from '../editor/view.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { View } from '../store/view.ts';
import type { Signal } from './hand.ts';
import { padProjection } from './padProjection.ts';
import { paintAtoms } from './paintAtoms.ts';
import { paintCross } from './paintCross.ts';
import { showSnapshot } from './snapshot.ts';
import { useHand, type Done } from './useHand.ts';
import { useSize } from './useSize.ts';
import { useSnapshot, type Seen } from './useSnapshot.ts';

interface Props {
  readonly still: Seen;
  /** What is shown over the still drawing and changes with each move. */
  readonly live: readonly Primitive[];
  readonly view: View;
  /** Where the keys' crosshair is; null while the keys are not drawing. */
  readonly cross: SitePoint | null;
  readonly cursor: 'default' | 'crosshair' | 'grab';
  /** What a pointer that comes down at a point is there for; a thing counts within `reach`. */
  readonly means: (touch: Touch, kind: Signal['kind']) => Signal['means'];
  readonly label: string;
  /** The ids of what says how it is used and what to do next. */
  readonly describedBy: string;
  /** The view at this moment: several deeds can come before the next render. */
  readonly viewNow: () => View;
  readonly onView: (change: (was: View) => View) => void;
  readonly onInput: (input: Input) => void;
  /** Asked for what lies there: a finger rests on it, or it has the other button of a mouse. */
  readonly onHold: (touch: Touch) => void;
  readonly onSize: (size: PadSize) => void;
}

/** How far from a pointer a thing still counts as touched, in CSS pixels. */
const reaches = { mouse: 9, pen: 12, touch: 22 } as const;
/** Wheel pixels that make the pad twice as large. */
const doubling = 400;

const paint =
  (paintOn: (context: CanvasRenderingContext2D) => void) =>
  (_: unknown, shape: Node): void => {
    const context = shape.getLayer()?.getNativeCanvasElement().getContext('2d');
    if (context) paintOn(context);
  };

const inputOf = ({ deed, kind, free }: Done, view: View): Input | null => {
  if (deed.do === 'leave') return { do: 'leave' };
  if (deed.do === 'pan' || deed.do === 'pinch' || deed.do === 'hold') return null;
  return { do: deed.do, at: toSite(view, deed.at), reach: toGround(view, reaches[kind]), free };
};

const viewAfter = ({ deed }: Done, view: View): View => {
  if (deed.do === 'pan') return panBy(view, deed);
  return deed.do === 'pinch' ? zoomAt(view, deed.about, deed.times) : view;
};

/** The drawing pad: the still drawing, the live one over it, and the hand. */
export const Pad = (props: Props) => {
  const { still, live, view, cross, onView, onInput, onSize } = props;
  const pad = useRef<HTMLDivElement>(null);
  const size = useSize(pad);
  const snapshots = useSnapshot(still, view, size);
  useHand(pad, {
    means: (at, kind) => {
      const now = props.viewNow();
      return props.means({ at: toSite(now, at), reach: toGround(now, reaches[kind]) }, kind);
    },
    onDone: (done) => {
      onView((was) => viewAfter(done, was));
      const now = props.viewNow();
      const input = inputOf(done, now);
      if (done.deed.do === 'hold')
        props.onHold({ at: toSite(now, done.deed.at), reach: toGround(now, reaches[done.kind]) });
      if (input !== null) onInput(input);
    },
    onWheel: (at, turn) => onView((was) => zoomAt(was, at, 2 ** (-turn / doubling))),
  });
  useEffect(() => {
    if (size.width > 0 && size.height > 0) onSize(size);
  }, [size, onSize]);
  const { palette, inch } = still;
  const paintStill = paint((context) => {
    for (const snapshot of snapshots) showSnapshot(context, snapshot, view);
  });
  const paintLive = paint((context) => {
    paintAtoms(context, explode(live, padProjection(view, inch)), { palette, scale: inch });
    if (cross !== null) paintCross(context, toScreen(view, cross), palette.selected);
  });
  return (
    <div
      ref={pad}
      className="pad"
      role="application"
      aria-label={props.label}
      aria-describedby={props.describedBy}
      // the pad takes the keys: it is where one draws
      tabIndex={0}
      data-view={`${view.scale} ${view.x} ${view.y}`}
      style={{ cursor: props.cursor, background: palette.paper }}
      onPointerDown={() => pad.current?.focus({ preventScroll: true })}
    >
      <Stage width={size.width} height={size.height} listening={false}>
        <Layer listening={false}>
          <Shape sceneFunc={paintStill} listening={false} perfectDrawEnabled={false} />
        </Layer>
        <Layer listening={false}>
          <Shape sceneFunc={paintLive} listening={false} perfectDrawEnabled={false} />
        </Layer>
      </Stage>
    </div>
  );
};
