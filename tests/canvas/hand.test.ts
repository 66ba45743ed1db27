import { describe, expect, it } from 'vitest';
import {
  emptyHand,
  handle,
  meansBesidePen,
  type Deed,
  type Hand,
  type Signal,
} from '../../src/canvas/hand.ts';

const signal = (on: Signal['on'], x: number, more: Partial<Signal> = {}): Signal => ({
  on,
  id: 1,
  kind: 'touch',
  at: { x, y: 0 },
  means: 'draw',
  ...more,
});

/** Runs signals through the machine from an empty hand. */
const play = (...signals: readonly Signal[]): { hand: Hand; deeds: Deed[] } => {
  let hand: Hand = emptyHand;
  const deeds: Deed[] = [];
  for (const next of signals) {
    const answer = handle(hand, next);
    hand = answer.hand;
    deeds.push(...answer.deeds);
  }
  return { hand, deeds };
};

const named = (deeds: readonly Deed[]) => deeds.map((deed) => deed.do);

describe('hand', () => {
  it('draws with the mouse from press to release, and hovers without', () => {
    const mouse = { kind: 'mouse' } as const;
    const { deeds, hand } = play(
      signal('move', 0, mouse),
      signal('down', 1, mouse),
      signal('move', 5, mouse),
      signal('up', 5, mouse),
    );
    expect(named(deeds)).toEqual(['move', 'press', 'move', 'release']);
    expect(hand).toEqual(emptyHand);
  });

  it('[N1] a tap that rolls less than 8 px presses and releases where it began', () => {
    const { deeds } = play(signal('down', 100), signal('move', 106), signal('up', 107));
    expect(deeds).toEqual([
      { do: 'press', at: { x: 100, y: 0 } },
      { do: 'release', at: { x: 100, y: 0 } },
    ]);
  });

  it('a finger that moves on draws from where it came down', () => {
    const { deeds } = play(signal('down', 100), signal('move', 120), signal('up', 130));
    expect(deeds).toEqual([
      { do: 'press', at: { x: 100, y: 0 } },
      { do: 'move', at: { x: 120, y: 0 } },
      { do: 'release', at: { x: 130, y: 0 } },
    ]);
  });

  it('[N1] two fingers pan and pinch and never draw', () => {
    const { deeds, hand } = play(
      signal('down', 100),
      signal('down', 200, { id: 2 }),
      signal('move', 300, { id: 2 }),
      signal('up', 300, { id: 2 }),
      signal('move', 110),
      signal('up', 110),
    );
    expect(deeds).toEqual([
      { do: 'pan', x: 50, y: 0 },
      { do: 'pinch', about: { x: 200, y: 0 }, times: 2 },
      { do: 'pan', x: 10, y: 0 },
    ]);
    expect(hand).toEqual(emptyHand);
  });

  it('[N2] fingers beside a pen that is down are the palm', () => {
    const pen = { id: 9, kind: 'pen' } as const;
    const { deeds, hand } = play(
      signal('down', 0, pen),
      signal('down', 80),
      signal('down', 90, { id: 2 }),
      signal('move', 200),
      signal('up', 200),
      signal('move', 3, pen),
      signal('up', 3, pen),
    );
    expect(named(deeds)).toEqual(['press', 'move', 'release']);
    expect(hand).toEqual(emptyHand);
  });

  it('[N2] a pen takes over from the palm that came first', () => {
    const pen = { id: 9, kind: 'pen' } as const;
    const { deeds } = play(
      signal('down', 80),
      signal('down', 0, pen),
      signal('up', 90),
      signal('up', 0, pen),
    );
    expect(deeds).toEqual([
      { do: 'press', at: { x: 0, y: 0 } },
      { do: 'release', at: { x: 0, y: 0 } },
    ]);
  });

  it('[N2] shortly after a pen a finger moves the paper, long after it what it did before', () => {
    for (const means of ['draw', 'tap', 'pan'] as const) {
      expect(meansBesidePen(means, 'touch', 200)).toBe('pan');
      expect(meansBesidePen(means, 'touch', 60_000)).toBe(means);
      expect(meansBesidePen(means, 'touch', Infinity)).toBe(means);
      expect(meansBesidePen(means, 'pen', 0)).toBe(means);
      expect(meansBesidePen(means, 'mouse', 0)).toBe(means);
    }
    const { deeds } = play(signal('down', 80, { means: 'pan' }), signal('up', 80));
    expect(deeds).toEqual([]);
  });

  it('[N4] a finger that rests asks for what lies there, and does nothing more when it moves or lifts', () => {
    for (const means of ['draw', 'tap'] as const) {
      const { deeds, hand } = play(
        signal('down', 80, { means }),
        signal('move', 84),
        signal('rest', 84),
        signal('move', 200),
        signal('up', 200),
      );
      expect(deeds).toEqual([{ do: 'hold', at: { x: 80, y: 0 } }]);
      expect(hand).toEqual(emptyHand);
    }
  });

  it('[N4] a finger that draws, pans, is gone or is one of two does not rest', () => {
    const moved = play(signal('down', 0), signal('move', 50), signal('rest', 50));
    expect(named(moved.deeds)).toEqual(['press', 'move']);
    const panned = play(signal('down', 0, { means: 'pan' }), signal('rest', 0));
    expect(panned.deeds).toEqual([]);
    const gone = play(signal('down', 0), signal('up', 0), signal('rest', 0));
    expect(named(gone.deeds)).toEqual(['press', 'release']);
    const two = play(signal('down', 0), signal('down', 9, { id: 2 }), signal('rest', 0));
    expect(two.deeds).toEqual([]);
  });

  it('[N1] a second finger beside one that rests pinches', () => {
    const { deeds } = play(
      signal('down', 100),
      signal('rest', 100),
      signal('down', 200, { id: 2 }),
      signal('move', 300, { id: 2 }),
    );
    expect(named(deeds)).toEqual(['hold', 'pan', 'pinch']);
  });

  it('pans with the middle button', () => {
    const middle = { kind: 'mouse', means: 'pan' } as const;
    const { deeds } = play(
      signal('down', 5, middle),
      signal('move', 25, middle),
      signal('up', 25, middle),
    );
    expect(deeds).toEqual([{ do: 'pan', x: 20, y: 0 }]);
  });

  it('where there is nothing to drag, a tap draws and a drag pans', () => {
    const open = { kind: 'mouse', means: 'tap' } as const;
    const tapped = play(signal('down', 5, open), signal('up', 6, open));
    expect(named(tapped.deeds)).toEqual(['press', 'release']);
    const dragged = play(signal('down', 5, open), signal('move', 25, open), signal('up', 25, open));
    expect(dragged.deeds).toEqual([{ do: 'pan', x: 20, y: 0 }]);
  });

  it('drops what was being drawn when the pointer is lost', () => {
    const { deeds } = play(signal('down', 0), signal('move', 50), signal('lost', 50));
    expect(named(deeds)).toEqual(['press', 'move', 'leave']);
  });
});
