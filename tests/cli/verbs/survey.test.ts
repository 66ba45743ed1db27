import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { golden } from '../golden.ts';
import { lath } from '../lath.ts';

const taped = readFileSync('sample-sites/taped-yard.site.json', 'utf8');

/** The taped yard with the tape from the house to the far corner read a foot too long. */
const misread = (() => {
  const site = JSON.parse(taped) as Site;
  const wrong = site.observations['observation:13'];
  if (wrong?.kind !== 'tape') throw new Error('expected a tape');
  const tape = { ...wrong, length: inches(wrong.length + 12) };
  return JSON.stringify({
    ...site,
    observations: { ...site.observations, 'observation:13': tape },
  });
})();

describe('lath survey', () => {
  it('[K20] tells where marks stand, how readings agree, which is wrong and what to tape next', async () => {
    const said = await lath(['survey', 'yard'], { yard: taped });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toBe(golden('taped-yard/survey.txt', said.out));
    expect(said.out).toMatch(/^Held: /);
  });

  it('[K20] names the tape that was read a foot too long', async () => {
    const { out } = await lath(['survey', 'yard'], { yard: misread });
    expect(out).toMatch(
      /^One reading disagrees with the rest\nHouse corner 2 to post C reads 23'-/,
    );
  });

  it('[K20] a site on which nothing was taped is sketched', async () => {
    const sketch = readFileSync('sample-sites/back-yard.site.json', 'utf8');
    const { out } = await lath(['survey', 'yard'], { yard: sketch });
    expect(out).toMatch(/^Sketched: nothing is taped yet/);
  });

  it('[K20] prints residuals, redundancy and places as JSON', async () => {
    const { out } = await lath(['survey', 'yard', '--json'], { yard: taped });
    const told = JSON.parse(out) as Record<string, unknown>;
    expect(told).toMatchObject({ stands: 'held', loose: [] });
    expect(Object.keys(told['readings'] as object)).toHaveLength(21);
    expect(Object.keys(told['marks'] as object)).toHaveLength(8);
  });

  it('[K20] a bad file is one line', async () => {
    expect(await lath(['survey', 'yard'], { yard: '{"format": "other"}' })).toMatchObject({
      code: 2,
    });
  });
});
