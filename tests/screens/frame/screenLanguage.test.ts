import { afterEach, describe, expect, it, vi } from 'vitest';
import {
  chooseLanguage,
  firstSpoken,
  screenLanguage,
} from '../../../src/screens/frame/screenLanguage.ts';

/** A device whose person reads some languages; it keeps what it is told, or refuses to keep anything. */
const device = (tags: readonly string[], keeps: 'all' | 'nothing' = 'all'): Map<string, string> => {
  const kept = new Map<string, string>();
  const refuse = (): never => {
    throw new DOMException('', 'SecurityError');
  };
  const localStorage = {
    getItem: (key: string) => (keeps === 'all' ? (kept.get(key) ?? null) : refuse()),
    setItem: (key: string, value: string) => (keeps === 'all' ? kept.set(key, value) : refuse()),
  };
  vi.stubGlobal('navigator', { languages: tags });
  vi.stubGlobal('window', { localStorage });
  return kept;
};

describe('the language of the screen', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('[A17] is the first that the reader has of those there are', () => {
    expect(firstSpoken(['fr-CA', 'es-MX', 'en-US'])).toBe('es');
    expect(firstSpoken(['EN', 'es'])).toBe('en');
    expect(firstSpoken(['fr', 'toString', ''])).toBe(null);
  });

  it('[A17] on a first visit follows the browser, else is English', () => {
    device(['es-419', 'en']);
    expect(screenLanguage()).toBe('es');
    device(['de', 'fr']);
    expect(screenLanguage()).toBe('en');
    device([]);
    expect(screenLanguage()).toBe('en');
  });

  it('[A17] is what was chosen on the device, whatever the browser says', () => {
    device(['en-US']);
    expect(chooseLanguage('es')).toBe(true);
    expect(screenLanguage()).toBe('es');
  });

  it('[A17] is not one that there is not', () => {
    const kept = device(['es']);
    chooseLanguage('en');
    for (const key of kept.keys()) kept.set(key, 'constructor');
    expect(screenLanguage()).toBe('es');
  });

  it('[A17] on a device that keeps nothing follows the browser, and says that it is not kept', () => {
    device(['es'], 'nothing');
    expect(chooseLanguage('en')).toBe(false);
    expect(screenLanguage()).toBe('es');
  });
});
