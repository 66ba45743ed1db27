import { describe, expect, it } from 'vitest';
import type { Flag } from '../../../src/engine/flag.ts';
import { changed } from '../changed.ts';
import { lath } from '../lath.ts';
import { sampleSite, sampleSites } from '../sampleSites.ts';

describe('lath flags', () => {
  it.each(sampleSites)('[K4] no stop flag stands on $name', async ({ text }) => {
    const said = await lath(['flags', '-', '--json'], { '-': text });
    expect(said).toMatchObject({ code: 0, err: '' });
    const levels = (JSON.parse(said.out) as Flag[]).map(({ level }) => level);
    expect(levels.filter((level) => level !== 'caution')).toEqual([]);
  });

  it('says so when there are none, and warns where a sample asks for it', async () => {
    const none = await lath(['flags', '-'], { '-': sampleSite('long-boundary') });
    expect(none.out).toBe('no flags\n');
    const some = await lath(['flags', '-'], { '-': sampleSite('corner-lot') });
    expect(some.out).toMatch(/^caution {2}gate:front +[^\n]+ is assumed; measure the part[^\n]+$/m);
  });

  it('[K24] with its working it tells what posts and leaves were compared with', async () => {
    const site = sampleSite('back-yard');
    const bare = await lath(['flags', '-'], { '-': site });
    const told = await lath(['flags', '-', '--working'], { '-': site });
    expect(told.code).toBe(bare.code);
    expect(told.out.startsWith(bare.out)).toBe(true);
    const more = told.out.slice(bare.out.length);
    expect(more).toContain('nobody has told of wind, ice or frost');
    expect(more).toMatch(/weighs about \d+ lb .* hole [\d'/" -]+ deep, 3'-0" planned/);
    expect(more).toContain('Caltrans 80-3.03');
    const windy = changed({
      conditions: {
        soil: 'sand',
        isolated: false,
        frost: 30,
        wind: { speed: 115, exposure: 'C' },
        ice: null,
        bays: 'by build',
      },
    });
    const { out } = await lath(['flags', '-', '--working'], { '-': windy });
    expect(out).toMatch(/Posts, compared\n.*Compared with/);
    expect(out).toMatch(/line post \S+ +bays to .*115 mph, exposure C/);
    expect(out).toMatch(/gate post \S+ +holds /);
  });

  it('[K7] code 1 while a stop flag stands, 0 for a lesser one', async () => {
    const text = changed({ 'gates/gate:walk/anchor/offset': 4000 });
    const said = await lath(['flags', 'yard', '--json'], { yard: text });
    expect(said.code).toBe(1);
    expect((JSON.parse(said.out) as Flag[])[0]).toMatchObject({
      level: 'stop',
      place: { kind: 'gate', id: 'gate:walk' },
    });
  });

  it('[K13] what was set too near is a stop, and a hinge for other posts a question', async () => {
    const asSet = {
      by: 'AB',
      on: '2026-11-25',
      top: 47,
      bottom: 47,
      leans: { start: null, end: null },
      leaves: {},
      hinges: {},
      remark: '',
    };
    const walk = JSON.parse(sampleSite('back-yard')) as {
      gates: Record<string, { leaves: Record<string, { hinge: string }> }>;
    };
    const [leaf] = Object.values(walk.gates['gate:walk']?.leaves ?? {});
    const text = changed({
      'gates/gate:walk/asSet': asSet,
      [`hardware/${leaf?.hinge}/fits/post`]: { low: 1.9, high: 2.375 },
    });
    const said = await lath(['flags', 'yard'], { yard: text });
    expect(said.code).toBe(1);
    expect(said.out).toMatch(
      /^stop +gate:walk +Walk gate as it was set, 3'-11" at the top, is too narrow by /m,
    );
    expect(said.out).toMatch(
      /^settle +gate:walk +Walk gate: hinge “[^”]+” fits posts of 1\.900" to 2\.375" OD/m,
    );
    const laid = await lath(['layout', 'yard'], { yard: text });
    expect(laid.out).toMatch(/^ {2}set at the top +3'-11" {2}too narrow by [^\n]+ for the latch$/m);
    expect(laid.out).toMatch(/^ {2}- Set the latch post again, plumb/m);
    const json = await lath(['layout', 'yard', '--json'], { yard: text });
    const { set, gates } = JSON.parse(json.out) as {
      set: Record<string, { governs: { width: number } }>;
      gates: Record<string, { stands: number }>;
    };
    expect(Object.keys(set)).toEqual(['gate:walk']);
    expect(set['gate:walk']?.governs.width).toBe(47);
    expect(gates['gate:walk']?.stands).toBe(47);
  });
});
