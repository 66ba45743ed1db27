import { afterEach, describe, expect, it, vi } from 'vitest';
import { language, speak } from '../../src/phrases/speak.ts';
import { phrase } from '../../src/phrases/phrase.ts';
import { speakNamed } from '../../src/screens/speakNamed.ts';

describe('a worker', () => {
  afterEach(async () => {
    vi.unstubAllGlobals();
    vi.useRealTimers();
    await speak('en');
  });

  it.each([
    ['es', 'Deshacer'],
    ['en', 'Undo'],
    ['', 'Undo'],
    ['toString', 'Undo'],
  ])('[A18] that is named %o says %s once it has loaded what it works by', async (name, said) => {
    vi.stubGlobal('self', { name });
    expect(await speakNamed(async () => phrase`Undo`)).toBe(said);
    expect(language()).toBe(name === 'es' ? 'es' : 'en');
  });

  it('[A18] fails where it cannot have what it works by, so that who started it hears', async () => {
    vi.stubGlobal('self', { name: 'es' });
    vi.useFakeTimers();
    const lacking = speakNamed(() => Promise.reject(new Error('not on this device')));
    await expect(lacking).rejects.toThrow('not on this device');
    expect(() => vi.runAllTimers()).toThrow('not on this device');
  });
});
