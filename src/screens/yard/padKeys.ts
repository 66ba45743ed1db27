import { heldKeys } from '../../canvas/heldKeys.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { ToolId } from '../../store/toolId.ts';
import { keyName } from '../help/keys/keyName.ts';
import { heardIn, type KeyRow, type Pressed } from '../help/keys/keyRow.ts';

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

/** What a key does, by how it was pressed. */
type DeedOf = (pressed: Pressed) => KeyDeed;

const ways: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

const arrow: DeedOf = ({ key, shift }) => {
  const [x, y] = ways[key] ?? [0, 0];
  return { do: 'arrow', x, y, far: shift };
};

const always =
  (deed: KeyDeed): DeedOf =>
  () =>
    deed;

/** While a piece is being drawn, figures begin its length. */
export const figureKeys: readonly KeyRow<DeedOf>[] = [
  {
    keys: [...'0123456789.'],
    deed: ({ key }) => ({ do: 'type', sign: key }),
    does: phrase`type the length of the piece being drawn`,
  },
];

/** Every key of the pad, besides those that take up tools. */
export const padKeys: readonly KeyRow<DeedOf>[] = [
  {
    keys: Object.keys(ways),
    shift: false,
    deed: arrow,
    does: phrase`move the crosshair by a square, or what is selected by a little; a post is held where it is moved`,
  },
  {
    keys: Object.keys(ways),
    shift: true,
    deed: arrow,
    does: phrase`the same, farther`,
  },
  {
    keys: [heldKeys.pan],
    deed: always({ do: 'place' }),
    does: phrase`sets a mark at the crosshair, or selects what is there`,
  },
  {
    keys: ['Enter'],
    deed: always({ do: 'finish' }),
    does: phrase`ends the line that is being drawn; else as ${keyName(heldKeys.pan)}`,
  },
  {
    keys: ['Backspace'],
    deed: always({ do: 'back' }),
    does: phrase`takes the last mark of the line back; else erases what is selected`,
  },
  {
    keys: ['Escape'],
    deed: always({ do: 'leave' }),
    does: phrase`leaves the tool, then lets the selection go; a held post stays held`,
  },
  {
    keys: ['Delete'],
    deed: always({ do: 'erase' }),
    does: phrase`erases what is selected; lets a held post go`,
  },
  {
    keys: ['+', '='],
    deed: always({ do: 'zoom', times: 1.25 }),
    does: phrase`shows the yard larger`,
  },
  { keys: ['-'], deed: always({ do: 'zoom', times: 0.8 }), does: phrase`shows the yard smaller` },
  { keys: ['0'], deed: always({ do: 'fit' }), does: phrase`shows all of the yard` },
  {
    keys: ['r'],
    deed: always({ do: 'list' }),
    does: phrase`opens the yard as a list, with all that can be drawn`,
  },
  {
    keys: ['z'],
    held: 'command',
    deed: always({ do: 'undo' }),
    does: phrase`takes the last step back`,
  },
  {
    keys: ['y'],
    held: 'command',
    deed: always({ do: 'redo' }),
    does: phrase`does again what was taken back`,
  },
  {
    keys: ['z'],
    held: 'command and Shift',
    deed: always({ do: 'redo' }),
    does: phrase`does again what was taken back`,
  },
];

/**
 * What a key does; null for one that does nothing. While a piece is being drawn, figures begin its
 * length; else 0 shows all. `letters` names the tools' keys.
 */
export const keyDeed = (
  pressed: Pressed,
  drawing: 'a piece' | 'nothing',
  letters: ReadonlyMap<string, ToolId>,
): KeyDeed | null => {
  const rows = drawing === 'a piece' ? [...figureKeys, ...padKeys] : padKeys;
  const row = heardIn(rows, pressed);
  if (row !== null) return row.deed(pressed);
  const tool = pressed.command ? undefined : letters.get(pressed.key.toLowerCase());
  return tool === undefined ? null : { do: 'tool', tool };
};
