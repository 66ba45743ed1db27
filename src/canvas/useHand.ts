import { useEffect, type RefObject } from 'react';
import type { ScreenPoint } from '../geometry/point.ts';
import { emptyHand, handle, type Deed, type Hand, type Signal } from './hand.ts';
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
    const hear = (on: Signal['on']) => (event: PointerEvent) => {
      const right = event.pointerType === 'mouse' && event.button > middleButton;
      if (on === 'down' && right) return;
      if (on === 'down') pad.setPointerCapture(event.pointerId);
      const kind = kinds.find((name) => name === event.pointerType) ?? 'mouse';
      const at = placed(pad, event);
      const middle = event.button === middleButton;
      const means = on !== 'down' ? 'draw' : middle ? 'pan' : latest.current.means(at, kind);
      const answer = handle(hand, { on, id: event.pointerId, kind, at, means });
      hand = answer.hand;
      for (const deed of answer.deeds) latest.current.onDone({ deed, kind, free: event.shiftKey });
    };
    const wheel = (event: WheelEvent) => {
      event.preventDefault();
      // a wheel that counts lines or pages counts about 16 px or 400 px for each
      const unit = [1, 16, 400][event.deltaMode] ?? 1;
      const finer = event.ctrlKey ? 4 : 1;
      latest.current.onWheel(placed(pad, event), event.deltaY * unit * finer);
    };
    const stay = (event: Event) => event.preventDefault();
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
    pad.addEventListener('contextmenu', stay);
    return () => {
      for (const [name, heard] of Object.entries(hears)) {
        pad.removeEventListener(name, heard as EventListener);
      }
      pad.removeEventListener('wheel', wheel);
      pad.removeEventListener('contextmenu', stay);
    };
  }, [element, latest]);
};
