import { describe, expect, it } from 'vitest';
import { idleBuilds } from '../../../../src/screens/load/alternatives/idleBuilds.ts';
import { plannedBuilds } from '../../../../src/screens/load/alternatives/plannedBuilds.ts';
import { addSpec } from '../../../../src/site/edits/addSpec.ts';
import { setLineSpec } from '../../../../src/site/edits/setLineSpec.ts';
import { bare, fence, spec } from '../../../engine/plainYard.ts';

const one = fence(addSpec(bare, 'spec:other', spec), [
  [0, 0],
  [600, 0],
]);
const two = fence(one, [
  [0, 900],
  [600, 900],
]);

describe('the builds that an alternative can replace', () => {
  it('are those that fence lines have, each once', () => {
    expect(plannedBuilds(bare)).toEqual([]);
    expect(plannedBuilds(two)).toEqual(['spec:six']);
    expect(plannedBuilds(setLineSpec(two, 'line:1', 'spec:other'))).toEqual([
      'spec:other',
      'spec:six',
    ]);
  });

  it('and those that it named while a line had them', () => {
    const instead = { 'spec:six': 'spec:other', 'spec:other': 'spec:six' } as const;
    expect(idleBuilds(two, { instead })).toEqual(['spec:other']);
    expect(idleBuilds(two, { instead: {} })).toEqual([]);
  });
});
