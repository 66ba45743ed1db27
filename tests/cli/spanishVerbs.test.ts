import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { languageIn } from '../../src/cli/languageIn.ts';
import type { Saying } from '../../src/phrases/phrase.ts';
import { spanish } from '../../src/phrases/es.ts';
import type { Said } from './lath.ts';

const corner = readFileSync('sample-sites/corner-lot.site.json', 'utf8');
const taped = readFileSync('sample-sites/taped-yard.site.json', 'utf8');
/** Purdue ASM 215, https://engineering.purdue.edu/~asm215/topics/travcalc.html */
const deed = `N26°10'E 285.10\nS75°25'E 610.45\nS15°30'W 720.48\nN1°42'W 203.00\nN53°06'W 647.02\n`;
const files = { corner, taped, deed, broken: '{', 'points.csv': 'x,y\n0,0\n10,0\n' };

type Lath = (args: readonly string[]) => Promise<Said>;

/** The command line in a language that is spoken before any of it is loaded. */
const lathIn = async (saying: Saying | null): Promise<Lath> => {
  vi.resetModules();
  const { speakBy } = await import('../../src/phrases/phrase.ts');
  speakBy(saying);
  const { lath } = await import('./lath.ts');
  await lath(['help']);
  return (args) => lath(args, files);
};

let english: Lath;
let spoken: Lath;
beforeAll(async () => {
  english = await lathIn(null);
  spoken = await lathIn((key) => spanish[key]);
}, 120_000);
afterAll(() => vi.resetModules());

const wholeOf = ({ out, err }: Said): string => `${out}\n${err}`;
const figuresOf = (text: string): string[] => text.match(/\d+(?:[./]\d+)?/g) ?? [];

/** What these tell has names and notes of the sample sites, which stay as they were written. */
const named = ['layout', 'flags', 'load', 'compare', 'merge'];

/** Words of English that no Spanish text has, but for options, verbs and what is published. */
const foreign =
  /\b(?:the|and|of|expected|found|with|from|leaves|hinges?|gates?|latch|posts?|holds?|fence|line|bay|bays|mark|marks|tape|wind|hole|deep|across|missing|given)\b/;

const calls: readonly (readonly [rule: string, args: readonly string[]])[] = [
  ['K8', ['layout', 'corner']],
  ['K7', ['flags', 'corner', '--working']],
  ['K9', ['load', 'corner']],
  ['K5', ['opening', '--leaf', '48', '--hinge', '3/4..1', '--catch', '1..2', '--set', '51']],
  ['K6', ['spacing', '--length', '54ft', '--max', '10ft', '--radius', '90ft']],
  ['K20', ['survey', 'taped']],
  ['K14', ['calls', 'deed']],
  ['K21', ['footing', '--post', '2.375', '--fabric', '6ft', '--push', '300', '--at', '40']],
  ['K22', ['wind', '--fabric', '6ft', '--post', '2.375', '--speed', '105', '--rail', '1.66']],
  ['K26', ['compare', 'corner']],
  ['C30', ['merge', 'corner', 'taped', '--out', 'both.json']],
  ['C22', ['take', 'corner', '--out', 'a.dxf']],
  ['K15', ['bring', 'points.csv', '--out', 'a.json']],
];

describe('the command line in Spanish', { timeout: 120_000 }, () => {
  it.each(calls)(
    '[A20] [%s] %j has the figures of the English one, in other words',
    async (_, args) => {
      const [own, other] = [await spoken(args), await english(args)];
      expect(own.code).toBe(other.code);
      expect(figuresOf(wholeOf(own)).toSorted()).toEqual(figuresOf(wholeOf(other)).toSorted());
      expect(own.out).not.toBe(other.out);
    },
  );

  it.each(calls.filter(([, [verb = '']]) => !named.includes(verb)))(
    '[A10] [%s] %j has no English word',
    async (_, args) => {
      const told = wholeOf(await spoken(args)).replace(/“[^”]*”|.*\/points .*/g, '');
      expect(told).not.toMatch(foreign);
    },
  );

  it('[A10] [K1] says of every verb in Spanish what it does and what each option says', async () => {
    const [own, other] = [await spoken(['help', '--json']), await english(['help', '--json'])];
    interface Told {
      readonly verb: string;
      readonly does: string;
      readonly usage: string;
      readonly options: readonly { readonly name: string; readonly does: string }[];
    }
    const [here, there] = [own, other].map(({ out }) => JSON.parse(out) as readonly Told[]);
    expect(here?.map(({ verb, usage }) => [verb, usage])).toEqual(
      there?.map(({ verb, usage }) => [verb, usage]),
    );
    for (const [n, { does, options }] of (here ?? []).entries()) {
      expect(does).not.toBe(there?.[n]?.does);
      for (const [m, option] of options.entries())
        expect(option.does).not.toBe(there?.[n]?.options[m]?.does);
    }
    expect((await spoken(['help'])).out).toContain('Códigos de salida: 0 hecho');
  });

  it('[A10] [K2] refuses in one line of Spanish', async () => {
    const refused = async (...args: readonly string[]) => await spoken(args);
    expect(await refused('layout')).toMatchObject({
      code: 2,
      out: '',
      err: 'lath layout: falta SITE: se esperaba lath layout SITE\n',
    });
    expect(await refused('spacing', '--length', '54ft')).toMatchObject({
      code: 2,
      out: '',
      err: 'lath spacing: falta --max: se esperaba --max L\n',
    });
    expect(
      await refused('opening', '--leaf', '40', '--hinge', '1', '--catch', 'wide'),
    ).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringMatching(/^--catch: “wide”.*se esperaba/),
    });
    expect(await refused('layout', 'broken')).toMatchObject({ code: 2, out: '' });
    expect((await refused('layout', 'broken')).err).not.toMatch(foreign);
    expect((await refused('lay')).err).toMatch(
      /^lath: no existe el verbo “lay”: se esperaba uno de/,
    );
  });
});

describe('--language before a verb', () => {
  it('[A15] is heard before every verb, also by those that have no such option', async () => {
    for (const args of [
      ['help'],
      ['schema'],
      ['spacing', '--length', '54ft', '--max', '10ft'],
      ['layout', 'corner'],
    ]) {
      const [plain, after] = [await english(args), await english(['--language', 'en', ...args])];
      expect(after).toMatchObject({ code: plain.code, out: plain.out, err: plain.err });
      const joined = await english(['--language=en', ...args]);
      expect(joined.out).toBe(plain.out);
      expect(languageIn(['--language', 'es', ...args])).toBe('es');
    }
  });

  it('[A15] is refused in one line where there is none, and where it comes twice', async () => {
    expect(await english(['--language', 'fr', 'help'])).toMatchObject({
      code: 2,
      out: '',
      err: '--language: “fr”: expected one of en, es\n',
    });
    for (const args of [['--language'], ['--language='], ['--language', '--json']])
      expect(await english(args)).toMatchObject({
        code: 2,
        out: '',
        err: 'lath: --language has no value: expected one of en, es\n',
      });
    expect(
      await english(['--language', 'en', 'layout', 'corner', '--language', 'en']),
    ).toMatchObject({
      code: 2,
      out: '',
      err: 'lath layout: --language is given twice: expected it once\n',
    });
  });
});
