import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { expect, it } from 'vitest';

/** What makes a page or a script of text, by what it is called in the standards of the web. */
const doors: readonly (readonly [name: string, found: RegExp])[] = [
  ['dangerouslySetInnerHTML', /dangerouslySetInnerHTML/],
  ['innerHTML, outerHTML', /\b(?:inner|outer)HTML\b/],
  ['insertAdjacentHTML', /\binsertAdjacentHTML\b/],
  ['createContextualFragment', /\bcreateContextualFragment\b/],
  ['setHTMLUnsafe', /\bsetHTMLUnsafe\b/],
  ['srcdoc', /\bsrcdoc\b/i],
  ['eval', /(?<![.\w])eval\s*\(/],
  ['Function', /\bnew Function\b|(?<![.\w])Function\s*\(/],
  ['document.write', /\bdocument\.write(?:ln)?\b/],
  ['a timer of text', /\bset(?:Timeout|Interval)\(\s*['"`]/],
  ['javascript:', /['"`]javascript:/i],
];

const top = join(import.meta.dirname, '..');
const files = readdirSync(join(top, 'src'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.(?:ts|tsx|html)$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name));

/** The doors that a text opens, each as "file: door". */
const openedBy = (file: string, text: string): string[] =>
  doors.filter(([, found]) => found.test(text)).map(([name]) => `${file}: ${name}`);

it('nothing in src/ makes a page or a script of text', () => {
  expect(files.length).toBeGreaterThan(500);
  const opened = files.flatMap((file) =>
    openedBy(relative(top, file).split(sep).join('/'), readFileSync(file, 'utf8')),
  );
  expect(opened).toEqual([]);
});

it('finds a planted door of each sort', () => {
  const planted = [
    '<p dangerouslySetInnerHTML={{ __html: name }} />',
    'card.innerHTML = name',
    "card.insertAdjacentHTML('beforeend', name)",
    'range.createContextualFragment(name)',
    'card.setHTMLUnsafe(name)',
    'frame.srcdoc = name',
    'eval(name)',
    'new Function(name)',
    'document.write(name)',
    "setTimeout('go()', 5)",
    "link.href = 'javascript:go()'",
  ];
  expect(planted.map((text) => openedBy('a', text).length)).toEqual(planted.map(() => 1));
});

it('scripts and styles of the page are files, none is written in it', () => {
  const page = readFileSync(join(top, 'src/index.html'), 'utf8');
  expect([...page.matchAll(/<script(?![^>]*\bsrc=)[^>]*>|<style|\son\w+=|\sstyle=/gi)]).toEqual([]);
});

it('the library of schemas comes by the one door that keeps it from making code', () => {
  const named = files
    .filter((file) => /from 'zod/.test(readFileSync(file, 'utf8')))
    .map((file) => relative(top, file).split(sep).join('/'));
  expect(named).toEqual(['src/site/z.ts']);
});
