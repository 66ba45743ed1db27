import { describe, expect, it } from 'vitest';
import { isGiven, valueOf, valuesOf } from '../../src/cli/call.ts';
import { readCall } from '../../src/cli/readCall.ts';

const shape = {
  name: 'weigh',
  places: ['SITE'],
  options: [
    { name: 'post', value: 'OD', needed: true, repeats: true, does: 'a post' },
    { name: 'wall', value: 'T', needed: false, repeats: false, does: 'its wall' },
    { name: 'wet', value: null, needed: false, repeats: false, does: 'filled with concrete' },
  ],
};

const reasonOf = (...args: string[]): string => {
  const call = readCall(shape, args);
  return call.ok ? 'it was read' : call.reason;
};

describe('readCall', () => {
  it('[K1] reads options before, after and between places, spaced or with =', () => {
    const call = readCall(shape, ['--post=2 3/8', 'yard', '--wet', '--post', '4', '--json']);
    if (!call.ok) throw new Error(call.reason);
    expect(call.value.places).toEqual(['yard']);
    expect(valuesOf(call.value, 'post')).toEqual(['2 3/8', '4']);
    expect(valueOf(call.value, 'wall')).toBeNull();
    expect(valuesOf(call.value, 'wall')).toEqual([]);
    expect([isGiven(call.value, 'wet'), isGiven(call.value, 'json')]).toEqual([true, true]);
  });

  it('[K1] takes - and a negative length as they are, and everything after -- as places', () => {
    const call = readCall(shape, ['-', '--post', '-1']);
    expect(call.ok && [call.value.places, valuesOf(call.value, 'post')]).toEqual([['-'], ['-1']]);
    const named = readCall(shape, ['--post', '4', '--', '--wet']);
    expect(named.ok && named.value.places).toEqual(['--wet']);
  });

  it.each([
    [['yard', '--post', '4', '--gold'], 'no option “--gold”'],
    [['yard', '--post', '4', '-x'], 'no option “-x”'],
    [['yard', '--post', '4', '--__proto__', '1'], 'no option “--__proto__”'],
    [['yard', '--post'], '--post has no value: expected --post OD'],
    [['yard', '--post', '--wet'], '--post has no value: expected --post OD'],
    [['yard', '--post='], '--post has no value: expected --post OD'],
    [['yard', '--post', '54 --wall 10'], 'the shell took the foot marks for quotes'],
    [['yard', '--post', '4', '--wet=yes'], '--wet takes no value'],
    [['yard', '--post', '4', '--json=yes'], '--json takes no value'],
    [['yard', '--post', '4', '--wall', '1', '--wall', '2'], '--wall is given twice'],
    [['yard'], '--post is missing: expected --post OD'],
    [['--post', '4'], 'SITE is missing: expected lath weigh SITE'],
    [['', '--post', '4'], 'SITE is missing: expected lath weigh SITE'],
    [['yard', 'shed', '--post', '4'], '“shed” is one word too many: expected SITE'],
  ])('[K1] refuses %j in one line', (args, reason) => {
    expect(reasonOf(...args)).toContain(reason);
    expect(reasonOf(...args)).toMatch(/^lath weigh: [^\n]+$/);
  });

  it('[K1] lets a place in brackets be left out', () => {
    const weighed = { ...shape, places: ['[SITE]'], options: [] };
    expect(readCall(weighed, [])).toMatchObject({ ok: true, value: { places: [] } });
    expect(readCall(weighed, ['yard'])).toMatchObject({ ok: true, value: { places: ['yard'] } });
    expect(readCall(weighed, ['yard', 'shed']).ok).toBe(false);
  });

  it('[K1] asks for nothing when help is wanted', () => {
    expect(reasonOf('--help')).toBe('it was read');
    expect(reasonOf('-h')).toBe('it was read');
  });
});
