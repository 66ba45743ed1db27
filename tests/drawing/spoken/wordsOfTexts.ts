import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** Every text in a value, at any depth. */
export const textsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
};

/** Texts as runs of words in small letters, so that one can be found in them; `|` is between any two. */
export const corpusOf = (texts: readonly string[]): string =>
  `|${texts
    .join('|')
    .toLowerCase()
    .replace(/[^\p{L}\s]+/gu, '|')
    .replace(/\s+/g, ' ')
    .replace(/ ?\| ?/g, '|')}|`;

const source = join(import.meta.dirname, '../../../src');

const literalsOf = (node: ts.Node): string[] => {
  const own = ts.isStringLiteralLike(node)
    ? [node.text]
    : ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)
      ? [node.text]
      : [];
  const inner: string[] = [];
  node.forEachChild((child) => {
    inner.push(...literalsOf(child));
  });
  return [...own, ...inner];
};

/** Texts that are put together of several stand as one. */
const joinedLiterals = (text: string): string => text.replace(/'\s*\+\s*'/g, '');

/** Every text that stands in the code of a folder of `src/`. */
export const textsOfFolder = (folder: string): string[] =>
  readdirSync(join(source, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .flatMap((name) => {
      const text = joinedLiterals(readFileSync(join(source, folder, name), 'utf8'));
      return literalsOf(ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true));
    });
