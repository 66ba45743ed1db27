import { describe, expect, it } from 'vitest';
import {
  emptyHand,
  handle,
  meansBesidePen,
  type Deed,
  type Signal,
} from '../../../src/canvas/hand.ts';
import { toolbox } from '../../../src/editor/toolbox.ts';
import { fieldKeys } from '../../../src/screens/fields/fieldKeys.ts';
import { gestureIds, gestures, type GestureId } from '../../../src/screens/help/keys/gestures.ts';
import { chordName, chordNames } from '../../../src/screens/help/keys/keyName.ts';
import { foundOn, keyPage } from '../../../src/screens/help/keys/keyPage.ts';
import { heardIn, plainDeed, type Pressed } from '../../../src/screens/help/keys/keyRow.ts';
import { programKeys } from '../../../src/screens/help/keys/programKeys.ts';
import { entryKeys } from '../../../src/screens/yard/entryKeys.ts';
import { listKeys, rowKeys } from '../../../src/screens/yard/list/rowKeys.ts';
import { figureKeys, keyDeed, padKeys } from '../../../src/screens/yard/padKeys.ts';

const page = keyPage('keys');
const rowsOf = (title: string) => page.find((group) => group.title === title)?.rows ?? [];

const others =
  'Enter Escape Delete Backspace Tab Home End PageUp PageDown Insert F1 F2 Shift ArrowUp ArrowDown ArrowLeft ArrowRight';
/** Every key that a keyboard has, as browsers name them. */
const keys = [
  ...Array.from({ length: 0x7f - 0x20 }, (_, n) => String.fromCharCode(0x20 + n)),
  ...others.split(' '),
];
const all: readonly Pressed[] = keys.flatMap((key) =>
  [true, false].flatMap((command) => [true, false].map((shift) => ({ key, command, shift }))),
);

/** How the page names a key as it was pressed: with Shift where that counts, and without. */
const namesOf = ({ key, command, shift }: Pressed): readonly string[] => {
  const small = key.length === 1 ? key.toLowerCase() : key;
  if (command) return [chordName(small, { held: shift ? 'command and Shift' : 'command' })];
  const plain = chordNames({ keys: [small] });
  if (/^\d$/.test(key)) return ['Figures', ...plain];
  if (!key.startsWith('Arrow')) return plain;
  return shift ? ['Shift + arrow keys'] : ['Arrow keys', ...plain];
};

const isShown = (pressed: Pressed, ...titles: readonly string[]): boolean => {
  const how = titles.flatMap(rowsOf).flatMap((row) => row.how);
  return namesOf(pressed).some((name) => how.includes(name));
};

const letters = new Map(toolbox.map(({ id, key }) => [key, id] as const));

describe('the page of keys', () => {
  it('shows every key that the pad hears, and none that it does not', () => {
    for (const pressed of all) {
      const heard = keyDeed(pressed, 'nothing', letters) ?? keyDeed(pressed, 'a piece', letters);
      const shown = isShown(pressed, 'On the pad', 'Tools of the yard');
      expect([pressed, shown]).toEqual([pressed, heard !== null]);
    }
  });

  it('says of every tool the key that takes it up', () => {
    const tools = rowsOf('Tools of the yard');
    expect(tools).toHaveLength(toolbox.length);
    for (const { id, key, label } of toolbox) {
      expect(tools).toContainEqual({ how: [key.toUpperCase()], does: label });
      const deed = keyDeed({ key, command: false, shift: false }, 'nothing', letters);
      expect(deed).toEqual({ do: 'tool', tool: id });
    }
  });

  it('names no key of the pad for two things', () => {
    const named = [padKeys, figureKeys].flatMap((rows) => rows.flatMap(chordNames));
    const tools = toolbox.map(({ key }) => key.toUpperCase());
    const twice = [...named, ...tools].filter((name, n, every) => every.indexOf(name) !== n);
    expect(twice).toEqual([]);
  });

  it.each([
    ['While a figure is typed over the pad', entryKeys],
    ['In a field', fieldKeys],
    ['In the list of the yard', [...rowKeys, ...listKeys]],
  ] as const)('shows just the keys that are heard: %s', (title, rows) => {
    for (const pressed of all.filter(({ command, shift }) => !command && !shift)) {
      const heard = plainDeed<string>(rows, pressed.key) !== null;
      expect([pressed.key, isShown(pressed, title)]).toEqual([pressed.key, heard]);
    }
  });

  it('is opened by a key that nothing in the yard wants', () => {
    const asks = all.filter((pressed) => heardIn(programKeys, pressed) !== null);
    expect(asks.map(({ key }) => key)).toEqual(['?', '?']);
    for (const pressed of asks) {
      expect(keyDeed(pressed, 'nothing', letters)).toBeNull();
      expect(keyDeed(pressed, 'a piece', letters)).toBeNull();
    }
  });

  it('is found by the words of a line, of its keys and of its group, with or without accents', () => {
    const does = (text: string) => foundOn(page, text).flatMap(({ rows }) => rows);
    expect(does('larger wheel')).toEqual([
      { how: ['Wheel'], does: 'shows the yard larger or smaller' },
    ]);
    expect(does('ESC sheet')).toHaveLength(1);
    expect(foundOn(page, 'In a field')[0]?.title).toBe('In a field');
    expect(does('nonsense')).toEqual([]);
    expect(foundOn(page, '  ')).toEqual(page);
    const spanish = [{ title: 'Líneas', rows: [{ how: ['Fin'], does: 'última' }] }];
    expect(foundOn(spanish, 'ultima')).toEqual(spanish);
  });
});

const at = (x: number) => ({ x, y: 0 }) as Signal['at'];
const signals = (kind: Signal['kind'], means: Signal['means'], ...xs: readonly number[]) => [
  { on: 'down', id: 1, kind, means, at: at(xs[0] ?? 0) } as const,
  ...xs.slice(1).map((x) => ({ on: 'move', id: 1, kind, means, at: at(x) }) as const),
  { on: 'up', id: 1, kind, means, at: at(xs.at(-1) ?? 0) } as const,
];
const second = { id: 2, kind: 'touch', means: 'draw' } as const;

/** The gestures of the page that the pad itself hears, as pointers make them, and what comes of each. */
const made: Readonly<Partial<Record<GestureId, readonly [readonly Signal[], Deed['do'][]]>>> = {
  tap: [signals('touch', 'draw', 0), ['press', 'release']],
  'drag selected': [signals('touch', 'draw', 0, 20), ['press', 'move', 'release']],
  drag: [signals('touch', 'tap', 0, 20), ['pan']],
  'two fingers': [
    [
      { on: 'down', id: 1, kind: 'touch', means: 'draw', at: at(0) },
      { on: 'down', ...second, at: at(50) },
      { on: 'move', ...second, at: at(90) },
    ],
    ['pan', 'pinch'],
  ],
  pen: [signals('pen', 'draw', 0, 2), ['press', 'move', 'release']],
  palm: [
    [
      { on: 'down', id: 1, kind: 'pen', means: 'draw', at: at(0) },
      { on: 'down', ...second, at: at(300) },
      { on: 'move', ...second, at: at(320) },
      { on: 'up', ...second, at: at(320) },
    ],
    ['press'],
  ],
  rest: [
    [
      { on: 'down', id: 1, kind: 'touch', means: 'draw', at: at(0) },
      { on: 'rest', id: 1, kind: 'touch', means: 'draw', at: at(0) },
      { on: 'up', id: 1, kind: 'touch', means: 'draw', at: at(0) },
    ],
    ['hold'],
  ],
  'finger beside the pen': [signals('touch', meansBesidePen('draw', 'touch', 500), 0, 20), ['pan']],
  click: [signals('mouse', 'draw', 0), ['press', 'release']],
  'drag by mouse': [signals('mouse', 'draw', 0, 20), ['press', 'move', 'release']],
  'middle button': [signals('mouse', 'pan', 0, 20), ['pan']],
  'Space and drag': [signals('mouse', 'pan', 0, 20), ['pan']],
};

describe('the page of gestures', () => {
  const shown = keyPage('fingers').flatMap(({ rows }) => rows);

  it('begins with gestures for a hand of fingers, and has the same lines either way', () => {
    expect(keyPage('fingers')[0]?.title).toBe('By touch');
    const sorted = (of: typeof page) => of.map(({ title }) => title).toSorted();
    expect(sorted(keyPage('fingers'))).toEqual(sorted(page));
  });

  it('shows every gesture once', () => {
    for (const id of gestureIds) {
      const own = shown.filter(({ how }) => how.includes(gestures[id].how));
      expect([id, own.map(({ does }) => does)]).toEqual([id, [gestures[id].does]]);
    }
  });

  it('says what the pad does when the pointers do that', () => {
    for (const [id, [given, deeds]] of Object.entries(made)) {
      const heard: Deed['do'][] = [];
      given.reduce((hand, signal) => {
        const answer = handle(hand, signal);
        heard.push(...answer.deeds.map((deed) => deed.do));
        return answer.hand;
      }, emptyHand);
      expect([id, heard]).toEqual([id, deeds]);
    }
  });
});
