import { describe, expect, it } from 'vitest';
import type { CallRemark } from '../../../src/engine/calls/callRemarks.ts';
import type { Calls } from '../../../src/engine/calls/calls.ts';
import type { Traverse } from '../../../src/engine/calls/traverse.ts';
import { quarryDeed, tiedDeed } from '../../engine/calls/deeds.ts';
import { golden } from '../golden.ts';
import { lath } from '../lath.ts';

type Told = Calls & {
  readonly traverse: Traverse;
  readonly remarks: readonly CallRemark[];
  readonly closure: number;
};

/** Purdue ASM 215, https://engineering.purdue.edu/~asm215/topics/travcalc.html */
const purdue = `N26°10'E 285.10\nS75°25'E 610.45\nS15°30'W 720.48\nN1°42'W 203.00\nN53°06'W 647.02\n`;

const told = async (text: string, ...options: readonly string[]): Promise<Told> =>
  JSON.parse((await lath(['calls', '-', '--json', ...options], { '-': text })).out) as Told;

describe('lath calls', () => {
  it.each([
    { name: 'quarry-deed', text: quarryDeed },
    { name: 'tied-deed', text: tiedDeed },
  ])('[K14] $name is read as it was, every piece of it told', async ({ name, text }) => {
    const said = await lath(['calls', 'deed.txt'], { 'deed.txt': text });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toBe(golden(`calls/${name}.txt`, said.out));
  });

  it('[K14] a published traverse: precision, area and a caution for less than 1:5000', async () => {
    const said = await lath(['calls', '-'], { '-': purdue });
    // exact arithmetic; the page has 1/2771, each course rounded to .01 first
    expect(said.out).toContain('precision 1:2,792.');
    expect(said.out).toContain('area 272,611 sq ft, 6.258 acres');
    expect(said.out).toContain('caution  The calls close to 1 in 2,792, worse than the 1 in 5,000');
    expect(said.code).toBe(0);
    const roughly = await lath(['calls', '-', '--closure', '1:2000'], { '-': purdue });
    expect(roughly.out).not.toContain('caution');
  });

  it('[K14] --json has the pieces, the courses and the working', async () => {
    const { pieces, courses, traverse, closure } = await told(purdue);
    expect([pieces.length, courses.length, closure]).toEqual([5, 5, 5000]);
    expect(traverse.misclosure.length / 12).toBeCloseTo(0.8833, 4);
    expect(traverse.lot?.courses[0]?.correction.lat).toBeGreaterThan(0);
    expect((traverse.lot?.area ?? NaN) / 144).toBeCloseTo(272_611, 0);
  });

  it('[K14] a side that is missing and calls that do not come back stop: exit code 1', async () => {
    const missing = await lath(['calls', '-'], { '-': purdue.replace('285.10', '') });
    expect(missing.code).toBe(1);
    expect(missing.out).toContain('1 call was not understood (line 1): its side is missing.');
    const open = await lath(['calls', '-'], { '-': 'due north 100\ndue east 100\ndue south 100' });
    expect(open.code).toBe(1);
    expect(open.out).toContain(`a last side due west 100.00' would close them`);
    const none = await lath(['calls', '-'], { '-': 'Lot 5 of no plan' });
    expect(none.code).toBe(1);
    expect(none.out).toContain('There is no call with a bearing and a distance.');
  });

  it('[K14] a quadrant that is misread is guessed, and nothing is worked out by the guess', async () => {
    const { remarks, traverse } = await told(
      `${purdue.replace("S15°30'W", "S15°30'E")}to the point of beginning`,
      '--closure',
      '2000',
    );
    expect(traverse.closes).toBe('off');
    expect(remarks.map(({ text }) => text)).toContainEqual(
      expect.stringContaining(`If course 3 were S 15°30'00" W in place of S 15°30'00" E`),
    );
  });

  it('[K14] distances in metres are told in metres', async () => {
    const said = await lath(['calls', '-', '--unit', 'metres'], {
      '-': 'due north 30.48\ndue east 30.48\ndue south 30.48\ndue west 30.48',
    });
    expect(said.out).toContain('perimeter 121.920 m');
    expect(said.out).toContain('They close exactly.');
    expect(said.out).toContain('area 10,000 sq ft, 0.230 acres, 929.0 m²');
  });

  it('[K14] another area than the deed says is a caution', async () => {
    const said = await lath(['calls', '-'], {
      '-': tiedDeed.replace(
        'TRUE POINT OF BEGINNING. ',
        'TRUE POINT OF BEGINNING, containing 0.32 acres. ',
      ),
    });
    expect(said.out).toContain('caution  The deed says 13,939 sq ft, 0.320 acres');
  });

  it.each([
    [['calls'], 'FILE is missing'],
    [['calls', 'none.txt'], 'none.txt: no such file'],
    [['calls', 'deed', '--unit', 'cubits'], '--unit: “cubits” is not a unit of land'],
    [['calls', 'deed', '--closure', 'well'], '--closure: “well” is not a precision'],
    [['calls', 'deed', '--closure', '0'], '--closure: “0” is not a precision'],
    [['calls', 'blank'], 'blank: has no calls: expected a line such as'],
    [['calls', 'long'], 'long: the calls have 100001 characters: expected at most 100000'],
  ])('[K2] %j is refused in one line', async (args, reason) => {
    const said = await lath(args, { deed: quarryDeed, blank: ' \n\n', long: 'x'.repeat(100_001) });
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain(reason);
    expect(said.err).toMatch(/^[^\n]+\n$/);
  });
});
