import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Bench } from '../../../src/screens/bench.ts';
import { screenLanguage } from '../../../src/screens/frame/screenLanguage.ts';
import { speakAnew } from '../../../src/screens/frame/speakAnew.ts';

/** A bench on which everything is kept, but for what is told of it. */
const bench = (but: {
  readonly piece?: 'begun' | 'begun meanwhile';
  readonly job?: 'unkept';
  readonly books?: 'unkept';
  readonly pictures?: 'unkept';
}): Bench => {
  let piece: unknown = but.piece === 'begun' ? {} : null;
  const now = async () => {
    if (but.piece === 'begun meanwhile') piece = {};
  };
  const history = { present: { site: {} }, draft: null };
  return {
    sender: { hand: { getState: () => ({ piece, asked: null }) } },
    site: { getState: () => ({ history, drawn: (site: unknown) => site }) },
    keepBooks: async () => but.books === undefined,
    jobs: {
      bytes: { has: () => but.pictures === undefined },
      keeper: { now, state: { getState: () => ({ all: but.job === undefined }) } },
    },
  } as unknown as Bench;
};

describe('another language', () => {
  const reload = vi.fn();
  beforeEach(() => {
    const kept = new Map<string, string>();
    const localStorage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => kept.set(key, value),
    };
    vi.stubGlobal('navigator', { languages: ['en'] });
    vi.stubGlobal('window', { localStorage, location: { reload } });
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    reload.mockReset();
  });

  it('[A17] is spoken by loading the page anew once all is kept', async () => {
    expect(await speakAnew(bench({}), 'es')).toBe(null);
    expect(reload).toHaveBeenCalledOnce();
    expect(screenLanguage()).toBe('es');
  });

  it.each([
    [{ piece: 'begun' }, 'Finish the piece first'],
    [{ piece: 'begun meanwhile' }, 'Finish the piece first'],
    [{ job: 'unkept' }, 'Not all of this is kept'],
    [{ books: 'unkept' }, 'Not all of this is kept'],
    [{ pictures: 'unkept' }, 'Not all of this is kept'],
  ] as const)('[A17] is not while %o', async (but, line) => {
    expect(await speakAnew(bench(but), 'es')).toContain(line);
    expect(reload).not.toHaveBeenCalled();
    expect(screenLanguage()).toBe('en');
  });
});
