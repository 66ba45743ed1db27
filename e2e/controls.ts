import type { Page } from '@playwright/test';

/** A control as it lies on the screen, CSS px, and what is wrong with where it lies. */
export interface Control {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Null where all of it can be seen and pressed once it is scrolled to. */
  readonly fault: string | null;
}

/**
 * Every control that is shown, each after it is scrolled to: how large it is to a finger (a tick with the
 * line that belongs to it), whether it goes over an edge of the screen, and whether something else lies
 * over its middle. What waits under an open dialog is left out.
 */
export const controlsOn = (page: Page): Promise<readonly Control[]> =>
  page.evaluate(() => {
    const dialog = document.querySelector('dialog[open]');
    const all = [
      ...(dialog ?? document).querySelectorAll<HTMLElement>(
        'button, a[href], input, select, textarea, summary',
      ),
    ].filter(
      // a file is chosen by a key that stands for its field
      (one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches('.unseen'),
    );
    return all.map((one) => {
      const target = one.closest('label.tick') ?? one;
      target.scrollIntoView({ block: 'center', inline: 'center' });
      const { left, top, width, height } = target.getBoundingClientRect();
      const [x, y] = [left + width / 2, top + height / 2];
      const met = document.elementFromPoint(x, y);
      const name = `${one.tagName.toLowerCase()} ${(one.getAttribute('aria-label') ?? one.closest('label, .field')?.textContent ?? one.textContent ?? '').slice(0, 50)}`;
      const over = left < -0.5 || left + width > window.innerWidth + 0.5;
      const cut = one.scrollWidth > one.clientWidth + 1 && one.tagName === 'BUTTON';
      const hidden = met === null || !(target.contains(met) || met.contains(target));
      const fault = over
        ? `goes from ${Math.round(left)} to ${Math.round(left + width)}`
        : hidden
          ? `lies under ${met?.tagName ?? 'nothing'} .${met?.className ?? ''}`
          : cut
            ? 'has words that are cut off'
            : null;
      return { name, width, height, fault };
    });
  });
