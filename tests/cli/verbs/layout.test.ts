import { describe, expect, it } from 'vitest';
import type { Layout, Run } from '../../../src/engine/layout.ts';
import type { Post, PostId } from '../../../src/engine/post.ts';
import type { TapeReadings } from '../../../src/engine/posts/tapeReadings.ts';
import { changed } from '../changed.ts';
import { golden } from '../golden.ts';
import { lath } from '../lath.ts';
import { sampleSite, sampleSites } from '../sampleSites.ts';

type Told = Pick<Layout, 'lines' | 'gates' | 'flags'> & {
  readonly posts: Readonly<Record<PostId, Post>>;
  readonly readings: Record<Run['id'], TapeReadings>;
};

const laid = async (text: string): Promise<Told> =>
  JSON.parse((await lath(['layout', '-', '--json'], { '-': text })).out) as Told;

describe('lath layout', () => {
  it.each(sampleSites)('[K8] $name is laid out as it was', async ({ name, text }) => {
    const said = await lath(['layout', 'yard'], { yard: text });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toBe(golden(`${name}/layout.txt`, said.out));
  });

  it('[K8] the drive gate of the back yard: 10 ft between faces, posts of 2.875 in', async () => {
    const { gates, posts } = await laid(sampleSite('back-yard'));
    const gate = gates['gate:drive'];
    // two leaves of 56-7/8, two hinges of 1-7/8, a gap of 2-1/2: common practice, no published source
    expect(gate?.opening.target).toBe(120);
    const [start, end] = [posts[gate?.posts?.start ?? 'post:'], posts[gate?.posts?.end ?? 'post:']];
    // centres = opening + half of each post's outside diameter
    expect(Math.hypot((end?.at.x ?? 0) - (start?.at.x ?? 0), 0)).toBeCloseTo(120 + 2.875, 9);
  });

  it.each(sampleSites)('[K8] $name: lead, spaces and tail add up to each run', async ({ text }) => {
    const { lines, readings } = await laid(text);
    const runs = Object.values(lines).flatMap((line) => line.runs);
    expect(Object.keys(readings).length).toBe(runs.length);
    for (const run of runs) {
      const tape = readings[run.id];
      if (tape === undefined) throw new Error(`no readings for ${run.id}`);
      const sum = tape.spaces.reduce<number>((total, one) => total + one, tape.lead) + tape.tail;
      expect(sum).toBeCloseTo(tape.total, 9);
      // half of the coarsest mark that a sample's tape is read to, an eighth of an inch
      expect(Math.abs(tape.total - run.length)).toBeLessThanOrEqual(1 / 16 + 1e-9);
      expect(tape.posts.length).toBe(run.posts.length);
    }
  });

  it('[K8] a run hooked at its end is read from there', async () => {
    const said = await lath(['layout', '-'], { '-': sampleSite('corner-lot') });
    const arm = said.out.split('\n').slice(3, 9);
    expect(arm[0]).toContain('tape hooked at the end');
    expect(arm[2]).toMatch(/ 0" {2}B +end /);
    expect(arm[5]).toMatch(/ 28'-0" {2}A +junction /);
  });

  it('[K8] a gate that does not fit is named and not placed', async () => {
    const text = changed({ 'gates/gate:drive/leaves/leaf:drive-1/widths/top': 240 });
    const said = await lath(['layout', '-'], { '-': text });
    expect(said.code).toBe(1);
    expect(said.out).toContain('\nDrive gate, not placed\n');
  });

  it('[K8] an empty site is no fault', async () => {
    const text = changed({ marks: {}, lines: {}, gates: {}, features: {} });
    const said = await lath(['layout', '-'], { '-': text });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toContain('0 terminal posts, 0 line posts, 0 gates\n');
  });
});
