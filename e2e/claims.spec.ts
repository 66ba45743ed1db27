import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';

const built = 'dist';

/** The scripts and pages that were built, without the words of libraries that claim nothing. */
const scripts = (): readonly (readonly [string, string])[] =>
  readdirSync(built, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:js|html)$/.test(name))
    .map((name) => {
      const text = readFileSync(join(built, name), 'utf8');
      // a reader of documents speaks of integers, and has a method of that name
      return [name, text.replaceAll(/safe integer range|[.,{]safe\(/g, '')] as const;
    });

test('nothing that was built claims that a plan complies or is safe', () => {
  const all = scripts();
  expect(all.length).toBeGreaterThan(5);
  // what is looked for would be found: the cautions are in there
  expect(all.some(([, text]) => text.includes('They approve nothing'))).toBe(true);
  const claim = /(?<![\w-])(?:compl(?:y|ies|iant|iance)|code[- ]compliant|safe)(?![\w-])/i;
  const found = all.flatMap(([name, text]) => {
    const at = text.search(claim);
    return at < 0 ? [] : [`${name}: ${text.slice(Math.max(0, at - 40), at + 40)}`];
  });
  expect(found).toEqual([]);
});
