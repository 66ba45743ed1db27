import { useEffect, useRef, type RefObject } from 'react';

const rowsOf = (panel: HTMLElement): HTMLElement[] => [
  ...panel.querySelectorAll<HTMLElement>('[data-row]'),
];

const first = (panel: HTMLElement): HTMLElement | undefined =>
  panel.querySelector<HTMLElement>('[data-row][aria-pressed="true"]') ??
  rowsOf(panel)[0] ??
  panel.querySelector<HTMLElement>('select') ??
  undefined;

/**
 * Keeps the focus in the list: on the selected row when the list is asked for and when a piece is
 * finished, on the length while a piece is drawn, on the row that took the place of one that is gone.
 */
export const useListFocus = (
  panel: RefObject<HTMLElement | null>,
  asked: object,
  drawing: boolean,
): void => {
  const last = useRef(0);
  const inside = useRef(false);
  const answered = useRef<object | null>(null);
  useEffect(() => {
    if (answered.current === asked || panel.current === null) return;
    answered.current = asked;
    first(panel.current)?.focus();
  }, [panel, asked]);
  useEffect(() => {
    const element = panel.current;
    if (element === null) return undefined;
    const came = (event: FocusEvent) => {
      inside.current = true;
      const at = rowsOf(element).indexOf(event.target as HTMLElement);
      if (at !== -1) last.current = at;
    };
    // what is taken off the page gives the focus to nothing: then it has not left by itself
    const left = (event: FocusEvent) => {
      if (event.relatedTarget !== null && !element.contains(event.relatedTarget as Node)) {
        inside.current = false;
      }
    };
    const elsewhere = (event: PointerEvent) => {
      if (!element.contains(event.target as Node)) inside.current = false;
    };
    element.addEventListener('focusin', came);
    element.addEventListener('focusout', left);
    window.addEventListener('pointerdown', elsewhere);
    return () => {
      element.removeEventListener('focusin', came);
      element.removeEventListener('focusout', left);
      window.removeEventListener('pointerdown', elsewhere);
    };
  }, [panel]);
  const was = useRef(drawing);
  useEffect(() => {
    const element = panel.current;
    if (element === null || !inside.current) return;
    if (drawing && !was.current) element.querySelector<HTMLElement>('.typed input')?.focus();
    was.current = drawing;
    if (document.activeElement !== document.body) return;
    const rows = rowsOf(element);
    const pressed = element.querySelector<HTMLElement>('[data-row][aria-pressed="true"]');
    (pressed ?? rows[Math.min(last.current, rows.length - 1)] ?? first(element))?.focus();
  });
};
