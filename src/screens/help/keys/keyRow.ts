/** A key as it was pressed. */
export interface Pressed {
  /** As the browser names it (`KeyboardEvent.key`). */
  readonly key: string;
  /** Whether Ctrl or Cmd is held. */
  readonly command: boolean;
  readonly shift: boolean;
}

/** Keys that do one thing: what handlers hear, and what the page of keys shows. */
export interface KeyRow<Deed> {
  /** As the browser names them; a letter is heard small and large. */
  readonly keys: readonly string[];
  /** `command` is held with them; where it is not named it must not be. */
  readonly held?: 'command' | 'command and Shift';
  /** Whether Shift is held; where it is not said either will do. */
  readonly shift?: boolean;
  readonly deed: Deed;
  /** What they do, in words. */
  readonly does: string;
}

const isOneOf = (keys: readonly string[], key: string): boolean =>
  keys.includes(key) || (key.length === 1 && keys.includes(key.toLowerCase()));

const isHeld = ({ held, shift }: KeyRow<unknown>, pressed: Pressed): boolean => {
  if ((held !== undefined) !== pressed.command) return false;
  if (held !== undefined) return (held === 'command and Shift') === pressed.shift;
  return shift === undefined || shift === pressed.shift;
};

/** The first row that a key belongs to; null for a key that none of them hears. */
export const heardIn = <Deed>(
  rows: readonly KeyRow<Deed>[],
  pressed: Pressed,
): KeyRow<Deed> | null =>
  rows.find((row) => isOneOf(row.keys, pressed.key) && isHeld(row, pressed)) ?? null;

/** What a key does where nothing is held with it; null for one that does nothing. */
export const plainDeed = <Deed>(rows: readonly KeyRow<Deed>[], key: string): Deed | null =>
  heardIn(rows, { key, command: false, shift: false })?.deed ?? null;
