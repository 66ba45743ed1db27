import { describe, expect, it } from 'vitest';
import { keyDeed } from '../../src/screens/yard/padKeys.ts';

const letters = new Map([['f', 'fence'] as const]);
const press = (key: string, more: { command?: boolean; shift?: boolean } = {}) => ({
  key,
  command: false,
  shift: false,
  ...more,
});

describe('keys of the yard', () => {
  it('figures begin a length only while a piece is drawn', () => {
    expect(keyDeed(press('5'), 'a piece', letters)).toEqual({ do: 'type', sign: '5' });
    expect(keyDeed(press('0'), 'a piece', letters)).toEqual({ do: 'type', sign: '0' });
    expect(keyDeed(press('5'), 'nothing', letters)).toBeNull();
    expect(keyDeed(press('0'), 'nothing', letters)).toEqual({ do: 'fit' });
  });

  it('arrows go north as up, and far with Shift', () => {
    expect(keyDeed(press('ArrowUp'), 'nothing', letters)).toEqual({
      do: 'arrow',
      x: 0,
      y: 1,
      far: false,
    });
    expect(keyDeed(press('ArrowLeft', { shift: true }), 'nothing', letters)).toEqual({
      do: 'arrow',
      x: -1,
      y: 0,
      far: true,
    });
  });

  it('Ctrl-Z undoes, Ctrl-Y and Ctrl-Shift-Z do again, other commands are the browser’s', () => {
    expect(keyDeed(press('z', { command: true }), 'a piece', letters)).toEqual({ do: 'undo' });
    expect(keyDeed(press('y', { command: true }), 'nothing', letters)).toEqual({ do: 'redo' });
    expect(keyDeed(press('Z', { command: true, shift: true }), 'nothing', letters)).toEqual({
      do: 'redo',
    });
    expect(keyDeed(press('f', { command: true }), 'nothing', letters)).toBeNull();
  });

  it('letters take up tools, in either case', () => {
    expect(keyDeed(press('F'), 'nothing', letters)).toEqual({ do: 'tool', tool: 'fence' });
    expect(keyDeed(press('q'), 'nothing', letters)).toBeNull();
  });
});
