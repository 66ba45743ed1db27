import { readFileSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bareWords } from './bareWords.ts';

const screens = join(import.meta.dirname, '../../src/screens');

const files = readdirSync(screens, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.tsx'))
  .map((entry) => relative(screens, join(entry.parentPath, entry.name)).split(sep).join('/'))
  .toSorted();

const exampleCalls = [
  `N 4°10' E 150.00`,
  'S 85-50-00 E 100 feet to a stake',
  'due south 2 chains 25 links',
  `az 274°10' 30.48 m`,
  'curve right, radius 40, arc 62.83',
].join('\n');

/** Texts that are the same in every language, and why. */
const sameEverywhere: Readonly<Record<string, string>> = {
  A: 'a point of the drawing, by its letter',
  B: 'a point of the drawing, by its letter',
  C: 'a point of the drawing, by its letter',
  D: 'a point of the drawing, by its letter',
  [exampleCalls]: 'a deed of the United States, as deeds there are written',
};

describe('the words of the screens', () => {
  it('[A10] are in phrases', () => {
    const found = files.flatMap((file) =>
      bareWords(readFileSync(join(screens, file), 'utf8'))
        .filter(({ text }) => !Object.hasOwn(sameEverywhere, text))
        .map(({ text, line }) => `${file}:${line} ${text}`),
    );
    expect(files.length).toBeGreaterThan(100);
    expect(found).toEqual([]);
  });

  it('[A10] are excepted only where they stand', () => {
    const stand = new Set(
      files.flatMap((file) =>
        bareWords(readFileSync(join(screens, file), 'utf8')).map(({ text }) => text),
      ),
    );
    expect(Object.keys(sameEverywhere).filter((text) => !stand.has(text))).toEqual([]);
  });

  it.each([
    ['<p>Open</p>', ['Open']],
    ['<p>{count} pages</p>', ['pages']],
    ["<p>{open ? 'Close' : phrase`Edit`}</p>", ['Close']],
    ["<p>{none || 'Nothing'}</p>", ['Nothing']],
    ['<a title="Fence" />', ['Fence']],
    ['<a aria-label={`Leg ${n}`} />', ['`Leg ${n}`']],
    ["<a aria-label={`${n}${one ? 'st' : ''}`} />", ['st']],
    ["const tools = [{ id: 'fence', label: 'Fence' }];", ['Fence']],
    ["session.setState({ say: fault ?? 'Saved' });", ['Saved']],
  ])('[A10] finds what is in none: %s', (code, texts) => {
    expect(bareWords(code).map(({ text }) => text)).toEqual(texts);
  });

  it.each([
    '<p className="note">{phrase`Open`}</p>',
    '<p>{name}: {count}</p>',
    '<p>· 1/2</p>',
    "<p hidden={is === 'open'}>{phrase`${n} of ${all}`}</p>",
    "<a key={`leg ${n}`} aria-label={`${name}: ${line}`} title={is === 'open' ? name : ''} />",
    "const tools = [{ id: 'fence', label: phrase`Fence` }];",
  ])('[A10] leaves alone what nobody reads, and phrases: %s', (code) => {
    expect(bareWords(code)).toEqual([]);
  });
});
