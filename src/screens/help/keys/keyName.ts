import { asItIs, phrase, phraseOf } from '../../../phrases/phrase.ts';

const names: Readonly<Record<string, string>> = {
  ' ': phraseOf('key')`Space`,
  Enter: phraseOf('key')`Enter`,
  Escape: phraseOf('key')`Esc`,
  Delete: phraseOf('key')`Delete`,
  Backspace: phraseOf('key')`Backspace`,
  Home: phraseOf('key')`Home`,
  End: phraseOf('key')`End`,
  Tab: phraseOf('key')`Tab`,
  Shift: phraseOf('key')`Shift`,
  ArrowUp: phraseOf('key')`Arrow up`,
  ArrowDown: phraseOf('key')`Arrow down`,
  ArrowLeft: phraseOf('key')`Arrow left`,
  ArrowRight: phraseOf('key')`Arrow right`,
  '-': phraseOf('key')`− (minus)`,
  '.': phraseOf('key')`. (point)`,
};

/** What a key is called, which the browser names so. */
export const keyName = (key: string): string => names[key] ?? asItIs(key.toUpperCase());

const chords = {
  command: (name: string) => phraseOf('key')`Ctrl or Cmd + ${name}`,
  'command and Shift': (name: string) => phraseOf('key')`Ctrl or Cmd + Shift + ${name}`,
} as const;

/** A key with what is held with it. */
export const chordName = (
  key: string,
  { held, shift }: { readonly held?: keyof typeof chords; readonly shift?: boolean },
): string => {
  if (held !== undefined) return chords[held](keyName(key));
  return shift === true ? phraseOf('key')`Shift + ${keyName(key)}` : keyName(key);
};

const figures = [...'0123456789'].join('');

/** The names of several keys that do one thing: all arrows, or all figures, are named as one. */
export const chordNames = (row: {
  readonly keys: readonly string[];
  readonly held?: keyof typeof chords;
  readonly shift?: boolean;
}): readonly string[] => {
  const { keys, shift } = row;
  if (keys.length === 4 && keys.every((key) => key.startsWith('Arrow')))
    return [shift === true ? phraseOf('key')`Shift + arrow keys` : phraseOf('key')`Arrow keys`];
  if (keys.join('').startsWith(figures))
    return [phrase`Figures`, ...keys.slice(figures.length).map((key) => chordName(key, row))];
  return keys.map((key) => chordName(key, row));
};
