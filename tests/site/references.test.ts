import { describe, expect, it } from 'vitest';
import { brokenReference } from '../../src/site/references.ts';
import { sampleDocument, sampleSite } from './sampleSite.ts';
import type { Site } from '../../src/site/site.ts';

type Plain = Record<string, unknown>;

/** The sample with one value, at a path of keys, exchanged; undefined takes it out. */
const changed = (path: string, value: unknown): Site => {
  const copy = structuredClone(sampleDocument) as unknown as Plain;
  const keys = path.split(' ');
  const inner = keys.slice(0, -1).reduce((at, key) => at[key] as Plain, copy);
  const last = keys.at(-1) ?? '';
  if (value === undefined) delete inner[last];
  else inner[last] = value;
  return copy as unknown as Site;
};

const gate1 = sampleDocument.gates['gate:1'];

describe('references', () => {
  it('[S4] a whole site has none that is broken', () => {
    expect(brokenReference(sampleSite)).toBeNull();
  });

  it.each([
    [
      'marks mark:2',
      undefined,
      'lines › line:1 › path › vertex:2 › mark: expected a mark of this site, found "mark:2"',
    ],
    [
      'marks mark:5',
      undefined,
      'features › feature:1 › path › vertex:9 › mark: expected a mark of this site, found "mark:5"',
    ],
    [
      'marks mark:10',
      undefined,
      'features › feature:2 › mark: expected a mark of this site, found "mark:10"',
    ],
    [
      'specs spec:1',
      undefined,
      'lines › line:1 › spec: expected a fence spec of this site, found "spec:1"',
    ],
    [
      'gates gate:1 line',
      'line:9',
      'gates › gate:1 › line: expected a fence line of this site, found "line:9"',
    ],
    [
      'gates gate:1 leg',
      'vertex:4',
      'gates › gate:1 › leg: expected the start of a leg of line:1, found "vertex:4"',
    ],
    [
      'gates gate:2 leg',
      'vertex:1',
      'gates › gate:2 › leg: expected the start of a leg of line:2, found "vertex:1"',
    ],
    [
      'gates gate:1 latch',
      'hardware:9',
      'gates › gate:1 › latch: expected a latch or drop rod of this site, found "hardware:9"',
    ],
    [
      'gates gate:1 latch',
      'hardware:1',
      'gates › gate:1 › latch: expected a latch or drop rod of this site, found "hardware:1"',
    ],
    [
      'gates gate:1 leaves leaf:1 hinge',
      'hardware:2',
      'gates › gate:1 › leaves › leaf:1 › hinge: expected a hinge of this site, found "hardware:2"',
    ],
    ['gates gate:1 leaves', {}, 'gates › gate:1 › leaves: expected one leaf or two, found 0'],
    [
      'gates gate:1 leaves',
      { ...gate1.leaves, 'leaf:9': { ...gate1.leaves['leaf:1'], order: 'a5' } },
      'gates › gate:1 › leaves: expected one leaf or two, found 3',
    ],
    [
      'gates gate:1 leaves leaf:2 order',
      'a0',
      'gates › gate:1 › leaves › leaf:2 › order: expected a key that no other has, found "a0"',
    ],
    [
      'lines line:1 path vertex:3 order',
      'a1',
      'lines › line:1 › path › vertex:3 › order: expected a key that no other has, found "a1"',
    ],
    [
      'alternatives',
      { 'alternative:1': { label: 'Tall', order: 'a0', instead: { 'spec:1': 'spec:9' } } },
      'alternatives › alternative:1 › instead › spec:1: expected fence specs of this site, found "spec:9"',
    ],
    [
      'alternatives',
      { 'alternative:1': { label: 'Tall', order: 'a0', instead: { 'spec:8': 'spec:1' } } },
      'alternatives › alternative:1 › instead › spec:8: expected fence specs of this site, found "spec:8"',
    ],
    [
      'alternatives',
      { 'alternative:1': { label: 'Tall', order: 'a0', instead: { 'spec:1': 'spec:1' } } },
      'alternatives › alternative:1 › instead › spec:1: expected another fence spec than its own, found "spec:1"',
    ],
    [
      'alternatives',
      {
        'alternative:1': { label: 'Tall', order: 'a0', instead: {} },
        'alternative:2': { label: 'Heavy', order: 'a0', instead: {} },
      },
      'alternatives › alternative:2 › order: expected a key that no other has, found "a0"',
    ],
  ])('[S4] [S80] %s as %j is told in one line', (path, value, line) => {
    expect(brokenReference(changed(path, value))).toBe(line);
  });
});
