import { useEffect, useRef } from 'react';
import type { Touch } from '../editor/hit.ts';
import type { Input } from '../editor/input.ts';
import { panBy, toGround, toSite, zoomAt, type Pad as PadSize } from '../editor/view.ts';
import type { View } from '../store/view.ts';
import type { Signal } from './hand.ts';
import { useHand, type Done } from './useHand.ts';
import { usePad, type Shown } from './usePad.ts';
import { useSize } from './useSize.ts';

interface Props extends Shown {
  readonly cursor: 'default' | 'crosshair' | 'grab';
  /** What a pointer that comes down at a point is there for; a thing counts within `reach`. */
  readonly means: (touch: Touch, kind: Signal['kind']) => Signal['means'];
  readonly label: string;
  /** The ids of what says how it is used and what to do next. */
  readonly describedBy: string;
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
  const { view, onView, onInput, onSize } = props;
  const pad = useRef<HTMLDivElement>(null);
  const paper = useRef<HTMLDivElement>(null);
  const size = useSize(pad);
  usePad({ pad, paper, size }, props);
  useHand(pad, {
    means: (at, kind) => {
      const now = view.now();
      return props.means({ at: toSite(now, at), reach: toGround(now, reaches[kind]) }, kind);
    },
    onDone: (done) => {
      onView((was) => viewAfter(done, was));
      const now = view.now();
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
  return (
    <div
      ref={pad}
      className="pad"
      role="application"
      aria-label={props.label}
      aria-describedby={props.describedBy}
      // the pad takes the keys: it is where one draws
      tabIndex={0}
      style={{ cursor: props.cursor, background: props.still.palette.paper }}
      onPointerDown={() => pad.current?.focus({ preventScroll: true })}
    >
      <div ref={paper} className="sheets" />
    </div>
  );
};
