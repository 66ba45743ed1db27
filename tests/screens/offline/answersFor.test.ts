import { describe, expect, it } from 'vitest';
import { answersFor } from '../../../src/screens/offline/answersFor.ts';
import { addressesOf } from '../../../src/screens/offline/partsOf.ts';

const scope = 'https://yard.example/lath/';

describe('what answers a request', () => {
  it.each([
    ['', 'navigate', 'bare'],
    ['#sheet', 'navigate', 'bare'],
    ['?sample=back-yard', 'navigate', 'page'],
    ['index.html', 'navigate', 'page'],
    ['index.html?sample=hillside#load', 'navigate', 'page'],
    ['elsewhere.html', 'navigate', null],
    ['assets/index-1.js', 'cors', 'part'],
  ] as const)('%s asked as %s: %s', (path, mode, answer) => {
    expect(answersFor({ url: scope + path, method: 'GET', mode }, scope)).toBe(answer);
  });

  it('leaves what is sent, and other addresses, to the network', () => {
    const asked = { url: `${scope}index.html`, method: 'POST', mode: 'navigate' } as const;
    expect(answersFor(asked, scope)).toBe(null);
    const other = { url: 'https://yard.example/', method: 'GET', mode: 'navigate' } as const;
    expect(answersFor(other, scope)).toBe(null);
  });
});

it('every file of a build is kept but the worker itself and letters that nothing reads', () => {
  const files = [
    'service-worker.js',
    'index.html',
    'assets/b.woff',
    'assets/b.woff2',
    'assets/a.js',
  ];
  expect(addressesOf(files)).toEqual(['./', './assets/a.js', './assets/b.woff2', './index.html']);
});
