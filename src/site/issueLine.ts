import type { z } from './z.ts';
import { quoted } from './quoted.ts';
import { phrase } from '../phrases/phrase.ts';

type Issue = z.core.$ZodIssue;

/** What a document has wrong: where it is, what was expected there and what was found. */
interface Fault {
  readonly where: readonly PropertyKey[];
  readonly expected: string;
  readonly found: unknown;
}

const kinds: Readonly<Record<string, string>> = {
  string: phrase`text`,
  number: phrase`a number`,
  boolean: phrase`true or false`,
  object: phrase`an object`,
  record: phrase`an object`,
};

const choice = (values: readonly unknown[]): string => values.map(quoted).join(phrase` or `);

/** `^mark:[…` is an id that starts with `mark:`; other patterns here are order keys. */
const form = (pattern: string): string => {
  const kind = /^\^([a-z]+:)/.exec(pattern)?.[1];
  const hex = /\^\[0-9a-f\]\{(\d+)\}\$/.exec(pattern)?.[1];
  if (hex !== undefined) return phrase`${hex} hex digits`;
  if (kind === 'picture:') return phrase`an id of "picture:" and 64 hex digits`;
  return kind === undefined
    ? phrase`up to 60 letters and digits`
    : phrase`an id such as ${quoted(`${kind}12`)}`;
};

const expectedOf = (issue: Issue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return kinds[issue.expected] ?? issue.expected;
    case 'too_small':
      return issue.inclusive
        ? phrase`at least ${`${issue.minimum}`}`
        : phrase`more than ${`${issue.minimum}`}`;
    case 'too_big':
      return issue.origin === 'string'
        ? phrase`at most ${`${issue.maximum}`} characters`
        : phrase`at most ${`${issue.maximum}`}`;
    case 'invalid_value':
      return choice(issue.values);
    case 'invalid_union':
      return choice(optionsOf(issue));
    case 'invalid_format':
      return form('pattern' in issue && typeof issue.pattern === 'string' ? issue.pattern : '');
    case 'invalid_key':
      return issue.issues.map(expectedOf)[0] ?? phrase`another name`;
    default:
      return issue.message;
  }
};

/** The values that a choice of several was between. */
const optionsOf = (issue: z.core.$ZodIssueInvalidUnion): unknown[] => {
  if ('options' in issue && Array.isArray(issue.options)) return issue.options;
  return issue.errors
    .flat()
    .flatMap((inner) => (inner.code === 'invalid_value' ? inner.values : []));
};

/** The value that a path leads to, by own keys only; undefined where it leads nowhere. */
const valueAt = (root: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((value, key) => {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    return (value as Record<PropertyKey, unknown>)[key];
  }, root);

const faultOf = (issue: Issue, root: unknown): Fault => {
  const [key] = issue.code === 'unrecognized_keys' ? issue.keys : [];
  if (key !== undefined) {
    const where = [...issue.path, key];
    return { where, expected: phrase`no such field`, found: valueAt(root, where) };
  }
  const found = issue.code === 'invalid_key' ? issue.path.at(-1) : valueAt(root, issue.path);
  return { where: issue.path, expected: expectedOf(issue), found };
};

/** A place in the document as one line names it, such as `gates › gate:3 › leaves`. */
export const placeLine = (path: readonly PropertyKey[]): string =>
  path
    .map((key) => (/^[\w: -]{1,60}$/.test(String(key)) ? String(key) : quoted(String(key))))
    .join(' › ');

/**
 * What a schema found wrong with `root` as one line: where (behind the place `from` in the
 * document), what was expected, and the value. The first of several speaks for all.
 */
export const issueLine = (
  error: z.core.$ZodError,
  root: unknown,
  from: readonly string[],
): string => {
  const [first, ...others] = error.issues;
  if (first === undefined) return phrase`${placeLine(from)}: expected another value`;
  const { where, expected, found } = faultOf(first, root);
  const more = others.length === 0 ? '' : phrase` (and ${others.length} more like it)`;
  const place = placeLine([...from, ...where]) || phrase`site file`;
  return phrase`${place}: expected ${expected}, found ${quoted(found)}${more}`;
};
