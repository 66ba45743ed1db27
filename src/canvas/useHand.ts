import { useEffect, type RefObject } from 'react';
import type { ScreenPoint } from '../geometry/point.ts';
import {
  emptyHand,
  handle,
  meansBesidePen,
  restTime,
  type Deed,
  type Hand,
  type Signal,
} from './hand.ts';
import { heldKeys } from './heldKeys.ts';
import { useLatest } from './useLatest.ts';

/** A deed with what the editor needs to know about the pointer that did it. */
export interface Done {
  readonly deed: Deed;
  readonly kind: Signal['kind'];
  /** Shift held: no snapping. */
  readonly free: boolean;
}

const kinds = ['mouse', 'touch', 'pen'] as const;
const middleButton = 1;

const kindOf = ({ pointerType }: PointerEvent): Signal['kind'] =>
  kinds.find((name) => name === pointerType) ?? 'mouse';

const placed = (element: HTMLElement, event: MouseEvent): ScreenPoint => {
  const box = element.getBoundingClientRect();
  return { x: event.clientX - box.left, y: event.clientY - box.top };
};

interface Wants {
  /** What a pointer that comes down at a point is there for. */
  readonly means: (at: ScreenPoint, kind: Signal['kind']) => Signal['means'];
  readonly onDone: (done: Done) => void;
  readonly onWheel: (at: ScreenPoint, turn: number) => void;
}

/** Listens to the pointers on an element and tells what they do. The latest `wants` is used. */
export const useHand = (element: RefObject<HTMLElement | null>, wants: Wants): void => {
  const latest = useLatest(wants);
  useEffect(() => {
    const pad = element.current;
    if (pad === null) return undefined;
    let hand: Hand = emptyHand;
    let penAt = -Infinity;
    let resting: number | undefined;
    const tell = (signal: Signal, free: boolean): void => {
      const answer = handle(hand, signal);
      hand = answer.hand;
      const { kind } = signal;
      for (const deed of answer.deeds) latest.current.onDone({ deed, kind, free });
    };
    const awaitRest = (signal: Signal): void => {
      window.clearTimeout(resting);
      const rest = () => tell({ ...signal, on: 'rest' }, false);
      if (hand.is === 'waiting' && signal.kind === 'touch')
        resting = window.setTimeout(rest, restTime);
    };
    const meant = (event: PointerEvent, at: ScreenPoint, kind: Signal['kind']) =>
      event.button === middleButton
        ? 'pan'
        : meansBesidePen(latest.current.means(at, kind), kind, event.timeStamp - penAt);
    const hear = (on: 'down' | 'move' | 'up' | 'lost') => (event: PointerEvent) => {
      const right = event.pointerType === 'mouse' && event.button > middleButton;
      if (on === 'down' && right) return;
      if (on === 'down') pad.setPointerCapture(event.pointerId);
      const kind = kindOf(event);
      if (kind === 'pen') penAt = event.timeStamp;
      const at = placed(pad, event);
      const means = on === 'down' ? meant(event, at, kind) : 'draw';
      const signal = { on, id: event.pointerId, kind, at, means };
      tell(signal, event.getModifierState(heldKeys.free));
      if (on !== 'move') awaitRest(signal);
    };
    const wheel = (event: WheelEvent) => {
      event.preventDefault();
      // a wheel that counts lines or pages counts about 16 px or 400 px for each
      const unit = [1, 16, 400][event.deltaMode] ?? 1;
      const finer = event.ctrlKey ? 4 : 1;
      latest.current.onWheel(placed(pad, event), event.deltaY * unit * finer);
    };
    const other = (event: MouseEvent) => {
      event.preventDefault();
      // a finger that rests is heard of by itself; a key asks for no place of the pad
      const mouse = event instanceof PointerEvent && event.pointerType === 'mouse';
      if (!mouse || hand.is !== 'empty') return;
      const deed: Deed = { do: 'hold', at: placed(pad, event) };
      latest.current.onDone({ deed, kind: 'mouse', free: false });
    };
    const hears = {
      pointerdown: hear('down'),
      pointermove: hear('move'),
      pointerup: hear('up'),
      pointercancel: hear('lost'),
    } as const;
    for (const [name, heard] of Object.entries(hears)) {
      pad.addEventListener(name, heard as EventListener);
    }
    pad.addEventListener('wheel', wheel, { passive: false });
    pad.addEventListener('contextmenu', other);
    return () => {
      window.clearTimeout(resting);
      for (const [name, heard] of Object.entries(hears)) {
        pad.removeEventListener(name, heard as EventListener);
      }
      pad.removeEventListener('wheel', wheel);
      pad.removeEventListener('contextmenu', other);
    };
  }, [element, latest]);
};
