import type { ToolId } from '../../store/toolId.ts';

/** What a key does in the yard. */
export type KeyDeed =
  | {
      readonly do:
        'undo' | 'redo' | 'fit' | 'place' | 'finish' | 'leave' | 'erase' | 'back' | 'list';
    }
  | { readonly do: 'zoom'; readonly times: number }
  | { readonly do: 'arrow'; readonly x: number; readonly y: number; readonly far: boolean }
  | { readonly do: 'tool'; readonly tool: ToolId }
  /** A sign that begins a length. */
  | { readonly do: 'type'; readonly sign: string };

export interface Key {
  readonly key: string;
  readonly command: boolean;
  readonly shift: boolean;
}

const arrows: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

const named: Readonly<Record<string, KeyDeed>> = {
  ' ': { do: 'place' },
  Enter: { do: 'finish' },
  Escape: { do: 'leave' },
  Delete: { do: 'erase' },
  Backspace: { do: 'back' },
  r: { do: 'list' },
  R: { do: 'list' },
  '+': { do: 'zoom', times: 1.25 },
  '=': { do: 'zoom', times: 1.25 },
  '-': { do: 'zoom', times: 0.8 },
};

const commandDeed = ({ key, shift }: Key): KeyDeed | null => {
  const letter = key.toLowerCase();
  if (letter === 'z') return { do: shift ? 'redo' : 'undo' };
  return letter === 'y' ? { do: 'redo' } : null;
};

/**
 * What a key does; null for one that does nothing. While a piece is being drawn, figures begin its
 * length; else 0 shows all. `letters` names the tools' keys.
 */
export const keyDeed = (
  key: Key,
  drawing: 'a piece' | 'nothing',
  letters: ReadonlyMap<string, ToolId>,
): KeyDeed | null => {
  if (key.command) return commandDeed(key);
  if (drawing === 'a piece' && /^[\d.]$/.test(key.key)) return { do: 'type', sign: key.key };
  if (key.key === '0') return { do: 'fit' };
  const arrow = arrows[key.key];
  if (arrow !== undefined) return { do: 'arrow', x: arrow[0], y: arrow[1], far: key.shift };
  const tool = letters.get(key.key.toLowerCase());
  return named[key.key] ?? (tool === undefined ? null : { do: 'tool', tool });
};
