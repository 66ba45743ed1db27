import { expect, type Locator, type Page } from '@playwright/test';

/** More presses of Tab than any screen has stops. */
const mostStops = 150;

const hasFocus = (control: Locator): Promise<boolean> =>
  control.evaluate((element) => element === document.activeElement);

/** A person who has keys and no pointer. */
export const keysOn = (page: Page) => {
  /** Goes on with Tab (or back with Shift) until a control has the focus. */
  const goTo = async (control: Locator, way: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> => {
    await expect(control).toBeVisible();
    for (let press = 0; press < mostStops; press += 1) {
      if (await hasFocus(control)) return;
      await page.keyboard.press(way);
    }
    throw new Error(`no ${way} led to ${control}`);
  };
  return {
    goTo,
    press: async (control: Locator, way?: 'Tab' | 'Shift+Tab'): Promise<void> => {
      await goTo(control, way);
      await page.keyboard.press('Enter');
    },
    /** Types into a field in place of what it has. */
    fill: async (field: Locator, text: string, way?: 'Tab' | 'Shift+Tab'): Promise<void> => {
      await goTo(field, way);
      await page.keyboard.press('Control+a');
      await page.keyboard.type(text);
    },
    /** Chooses of a list by the letters that its words begin with. */
    choose: async (field: Locator, words: string, way?: 'Tab' | 'Shift+Tab'): Promise<void> => {
      await goTo(field, way);
      await page.keyboard.type(words);
      await expect(field.locator('option:checked')).toContainText(words);
    },
  };
};
