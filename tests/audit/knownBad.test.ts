import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { knownBad, lockedIn, names, type KnownBad, type Locked } from './knownBad.ts';

const top = join(import.meta.dirname, '..', '..');
const locked = lockedIn(readFileSync(join(top, 'package-lock.json'), 'utf8'));

const line = ({ name, version }: Locked, { below, what, source }: KnownBad): string =>
  `${name} ${version}: ${what}; mended in ${below}, ${source}`;

const found = (packages: readonly Locked[], list: readonly KnownBad[]): string[] =>
  packages.flatMap((one) => list.filter((bad) => names(bad, one)).map((bad) => line(one, bad)));

it('no version that an advisory names as bad is in the lock file', () => {
  expect(locked.length).toBeGreaterThan(150);
  expect(
    found(
      locked,
      knownBad.filter(({ accepted }) => accepted === undefined),
    ),
  ).toEqual([]);
});

it('an advisory is accepted only for as long as there is need', () => {
  const idle = knownBad.filter(
    (bad) => bad.accepted !== undefined && !locked.some((one) => names(bad, one)),
  );
  expect(idle).toEqual([]);
});

it('each entry is of a package that is locked, with its advisory and two versions in order', () => {
  const known = new Set(locked.map(({ name }) => name));
  for (const { name, from, below, source } of knownBad) {
    expect(known.has(name), `${name} is no part of this project any more`).toBe(true);
    expect(source).toMatch(/^https:\/\/github\.com\/advisories\/GHSA(?:-[\da-z]{4}){3}$/);
    for (const version of [below, from ?? below]) expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  }
});

it('finds a planted package, also one inside of another, and lets its mended versions be', () => {
  const lock = (version: string) =>
    lockedIn(
      JSON.stringify({
        packages: { '': { version: '1.0.0' }, 'node_modules/a/node_modules/@b/c': { version } },
      }),
    );
  const bad = { name: '@b/c', from: '2.0.0', below: '2.10.3', severity: 'high', what: 'planted' };
  const list = [{ ...bad, source: 'planted here' }];
  const isFound = (version: string) => found(lock(version), list).length === 1;
  expect(['2.0.0', '2.9.20', '2.10.2', '2.10.3-beta.1'].filter(isFound)).toHaveLength(4);
  expect(['1.9.9', '2.10.3', '2.11.0', '3.0.0', '10.0.0'].filter(isFound)).toEqual([]);
});

it('of the reader of PDFs only what paints and lists is used, which the accepted advisory rests on', () => {
  const imported = readdirSync(join(top, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .flatMap((name) => [
      ...readFileSync(join(top, 'src', name), 'utf8').matchAll(/['"](pdfjs-dist\/[^'"]+)['"]/g),
    ])
    .map(([, module = '']) => module.replace(/\?.*$/, ''))
    .filter((module) => /\.m?js$/.test(module));
  expect([...new Set(imported)].sort()).toEqual([
    'pdfjs-dist/legacy/build/pdf.mjs',
    'pdfjs-dist/legacy/build/pdf.worker.min.mjs',
  ]);
});
