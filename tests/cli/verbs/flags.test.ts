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

  it('says so when there are none, and warns where a sample has one', async () => {
    const none = await lath(['flags', '-'], { '-': sampleSite('back-yard') });
    expect(none.out).toBe('no flags\n');
    const one = await lath(['flags', '-'], { '-': sampleSite('corner-lot') });
    expect(one.out).toMatch(
      /^caution {2}gate:front {2}[^\n]+ is assumed; measure the part[^\n]+\n$/,
    );
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
});
