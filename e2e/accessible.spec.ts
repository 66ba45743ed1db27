import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { controlsOn } from './controls.ts';
import { openRichYard } from './richYard.ts';
import { comeTo, goBack, richStates, states, type State } from './states.ts';

const themes = ['day', 'dark', 'sun'] as const;

/** As high as the longest card with all of it open, CSS px. */
const tall = 3600;

/** What a state of the yard has that the yard itself has not. */
const partOf = ({ key, list, tour }: State): string => {
  if (tour !== undefined) return '.tour';
  if (key !== undefined) return 'dialog[open]';
  return list === true ? '.yardlist' : '.card';
};

/** What axe finds: everything by day; in another light the colours of what is new in this state. */
const violationsOf = async (page: Page, state: State, theme: string) => {
  const axe = new AxeBuilder({ page }).options({ resultTypes: ['violations'], preload: false });
  if (theme === 'day') return (await axe.analyze()).violations;
  const whole = state.screen !== 'Yard' || state.name === 'the yard';
  const part = whole ? axe : axe.include(partOf(state));
  return (await part.withRules(['color-contrast']).analyze()).violations;
};

/** The program on the sample yard. */
const open = async (page: Page): Promise<void> => {
  await page.goto('/');
  await expect(page.locator('.card-head')).toBeVisible();
};

/** Comes to every state, first of the sample yard, then of one that has one of each. */
const inEach = async (page: Page, look: (state: State) => Promise<void>): Promise<void> => {
  const walk = async (all: readonly State[]): Promise<void> => {
    for (const state of all) {
      await comeTo(page, state);
      await look(state);
      await goBack(page);
    }
  };
  await open(page);
  await walk(states);
  await openRichYard(page);
  await walk(richStates);
};

// a desk and a phone have every layout; a light changes colours alone, which are the same on both
test('axe finds nothing in any state and light', { tag: '@desk-phone' }, async ({ page }) => {
  test.setTimeout(900_000);
  const lights = test.info().project.name === 'desktop' ? themes : (['day'] as const);
  const { width } = page.viewportSize() ?? { width: 1440 };
  // axe judges no colour of what is scrolled out of sight: here nothing is
  await page.setViewportSize({ width, height: tall });
  const found: unknown[] = [];
  await inEach(page, async (state) => {
    for (const theme of lights) {
      await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
      const violations = await violationsOf(page, state, theme);
      found.push(
        ...violations.map(({ id, nodes }) => [
          state.name,
          theme,
          id,
          nodes.map(({ html }) => html.slice(0, 120)),
        ]),
      );
    }
  });
  expect(found).toEqual([]);
});

const sizes = 'every control is large enough: 24 px anywhere, 44 px on the yard';
test(sizes, { tag: '@phone' }, async ({ page }) => {
  // WCAG 2.2, 2.5.8 asks for 24 CSS px; 44 are ours, for a gloved finger in the yard
  test.setTimeout(300_000);
  const small: unknown[] = [];
  await inEach(page, async (state) => {
    const least = state.screen === 'Yard' ? 44 : 24;
    for (const { name, width, height } of await controlsOn(page)) {
      if (Math.min(width, height) < least - 0.01) small.push([state.name, name, width, height]);
    }
  });
  expect(small).toEqual([]);
});

for (const [width, height, why] of [
  // WCAG 2.2, 1.4.10: a page reflows to 320 CSS px
  [320, 640, 'the narrowest page'],
  // 1.4.4: 1280 by 1024 with everything at 200 %
  [640, 512, 'a desk at 200 %'],
] as const) {
  test(
    `on ${why}, ${width} by ${height}, no control is cut off or covered`,
    { tag: '@desk' },
    async ({ page }) => {
      test.setTimeout(300_000);
      await page.setViewportSize({ width, height });
      const lost: unknown[] = [];
      await inEach(page, async (state) => {
        for (const { name, fault } of await controlsOn(page)) {
          if (fault !== null) lost.push([state.name, name, fault]);
        }
      });
      expect(lost).toEqual([]);
    },
  );
}
