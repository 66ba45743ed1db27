import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../../src/units/parseLength.ts';
import { lath } from '../lath.ts';

interface Told {
  readonly target: number;
  readonly holdsFrom: number;
  readonly holdsTo: number;
  readonly likelyFrom: number;
  readonly likelyTo: number;
  readonly leaf?: number;
  readonly set?: { readonly planned: number; readonly verdict: string; readonly by: number };
  readonly terms: readonly { readonly role: string; readonly planned: number }[];
}

const opening = async (...args: string[]): Promise<Told> => {
  const said = await lath(['opening', ...args, '--json']);
  if (said.err !== '') throw new Error(said.err);
  return JSON.parse(said.out) as Told;
};

const hinges = (...texts: string[]): string[] => texts.flatMap((text) => ['--hinge', text]);
const leaves = (...texts: string[]): string[] => texts.flatMap((text) => ['--leaf', text]);

describe('lath opening', () => {
  it('[K5] 10 ft double gate: two leaves of 56-7/8, hinges 1-7/8, centre 2-1/2 make 120 in', async () => {
    // 120 - (2 × 1-7/8 + 2-1/2) = 113-3/4, two leaves of 56-7/8: trade arithmetic on allowances
    // that are common practice, no published source; opening measured inside face to inside face
    const told = await opening(
      ...leaves('56 7/8', '56 7/8'),
      ...hinges('1 7/8', '1 7/8'),
      '--catch',
      '2 1/2..2 1/2',
    );
    expect(told.target).toBe(120);
    expect([told.holdsFrom, told.holdsTo]).toEqual([120, 120]);
    expect(told.terms.map(({ role }) => role)).toEqual(['hinge', 'leaf', 'latch', 'leaf', 'hinge']);
  });

  it.each([
    // sums of common practice, no published source
    [['32 1/4'], ['1 3/4'], '2', 36],
    [['44 1/4'], ['1 3/4'], '2', 48],
    [['44'], ['1 7/8'], '2 1/8', 48],
    [['68 5/8', '68 5/8'], ['1 7/8', '1 7/8'], '3', 144],
    // a rigid panel that takes 1 1/2 in all, and a wooden gate with 3/4 on each side
    [['50'], ['3/4'], '3/4', 51.5],
    [['36'], ['3/4'], '3/4', 37.5],
  ])('[K5] leaves %j, hinges %j, gap %s make %d in', async (widths, takes, gap, sum) => {
    const told = await opening(...leaves(...widths), ...hinges(...takes), '--catch', gap);
    expect(told.target).toBe(sum);
  });

  // what leaves are narrower than their opening, by the hardware of walk and drive gates: common
  // practice, no published source
  it.each([
    {
      what: 'a walk gate with 1 5/8 and 2',
      count: 1,
      want: '48',
      taken: ['1 5/8', '2'],
      under: 3.625,
    },
    {
      what: 'a walk gate with 1 7/8 and 2 1/8',
      count: 1,
      want: '48',
      taken: ['1 7/8', '2 1/8'],
      under: 4,
    },
    {
      what: 'a double gate of 10 ft',
      count: 2,
      want: '10ft',
      taken: ['1 7/8', '2 1/2'],
      under: 6.25,
    },
    { what: 'a double gate of 12 ft', count: 2, want: '12ft', taken: ['1 7/8', '3'], under: 6.75 },
  ])('[K5] the leaves of $what', async ({ count, want, taken: [hinge = '', gap = ''], under }) => {
    const each = Array.from({ length: count }, () => hinge);
    const args = [...hinges(...each), '--catch', gap, '--want', want, '--step', '1/8'];
    const told = await opening(...args, '--leaves', `${count}`);
    expect(told.target - count * (told.leaf ?? NaN)).toBe(under);
    expect(`${told.target}`).toBe(want === '48' ? want : `${parseInt(want, 10) * 12}`);
  });

  it('[K5] 150 mm on each side of 4020 mm make 4320 mm', async () => {
    // common practice, no published source
    const said = await lath([
      'opening',
      '--leaf',
      '4020mm',
      '--hinge',
      '150mm',
      '--catch',
      '150mm',
    ]);
    expect(said.out).toContain('Opening  4320 mm\n');
  });

  it('[K5] plans the gap in the middle of the catch range unless told, and hinges at their largest', async () => {
    const args = [...leaves('44'), ...hinges('1 5/8..1 7/8'), '--catch', '1 1/2..2 1/2'];
    expect((await opening(...args)).target).toBe(44 + 1.875 + 2);
    const told = await opening(...args, '--plan-gap', '2 1/4');
    expect(told.target).toBe(44 + 1.875 + 2.25);
    // from: the hinge at its largest and the smallest gap; to: the smallest hinge, the largest gap
    expect([told.holdsFrom, told.holdsTo]).toEqual([44 + 1.875 + 1.5, 44 + 1.625 + 2.5]);
  });

  it('[K5] turned round: leaves rounded down to the step, and the opening that they then make', async () => {
    const args = [...hinges('1 7/8', '1 7/8'), '--catch', '2 1/4..3', '--plan-gap', '2 1/2'];
    const exact = await opening(...args, '--want', '10ft', '--leaves', '2', '--step', '1/8');
    expect([exact.leaf, exact.target]).toEqual([56.875, 120]);
    const down = await opening(...args, '--want', '10ft', '--leaves', '2', '--step', '1/2');
    expect([down.leaf, down.target]).toEqual([56.5, 119.25]);
  });

  it('[K5] an opening that was set: what gap is left, and code 1 when the latch cannot catch', async () => {
    const args = [...leaves('44'), ...hinges('1 5/8..1 7/8'), '--catch', '1 1/2..2 1/2'];
    const at = async (width: string) => {
      const said = await lath(['opening', ...args, '--set', width, '--json']);
      const { set } = JSON.parse(said.out) as Told;
      return [said.code, set?.verdict, set?.planned, set?.by];
    };
    expect(await at('48')).toEqual([0, 'holds', 2.125, 0]);
    expect(await at('48 1/4')).toEqual([0, 'may hold', 2.375, 0]);
    expect(await at('49')).toEqual([1, 'too wide', 3.125, 0.625]);
    expect(await at('47')).toEqual([1, 'too narrow', 1.125, 0.125]);
  });

  it('[K5] any leaf turned round and back again is the same leaf', async () => {
    const eighths = fc.integer({ min: 8 * 20, max: 8 * 120 }).map((n) => n / 8);
    await fc.assert(
      fc.asyncProperty(eighths, fc.constantFrom(1, 2), async (leaf, count) => {
        const parts = [
          ...Array.from({ length: count }, () => ['--hinge', '1 5/8..1 7/8']).flat(),
          '--catch',
          '2..3',
        ];
        const given = Array.from({ length: count }, () => ['--leaf', String(leaf)]).flat();
        const { target } = await opening(...given, ...parts);
        const round = ['--want', `${target}`, '--leaves', `${count}`, '--step', '1/8'];
        const back = await opening(...parts, ...round);
        expect([back.leaf, back.target]).toEqual([leaf, target]);
      }),
      { numRuns: 50 },
    );
  });

  const whole = [...leaves('44'), ...hinges('1 7/8'), '--catch', '2..3'];
  const turned = ['--hinge', '1 7/8', '--catch', '2..3', '--want', '48'];
  it.each([
    [['--hinge', '2', '--catch', '2'], '--leaf is missing'],
    [[...leaves('44'), '--catch', '2'], '--hinge is missing: expected --hinge LOW..HIGH'],
    [[...whole, '--adjustable-hinge', '2'], '--hinge: expected one for each leaf (1), found 2'],
    [[...leaves('44'), '--catch', '2', '--adjustable-hinge', '2..1'], '--adjustable-hinge: “2..1”'],
    [[...leaves('44'), '--hinge', '2'], '--catch is missing: expected --catch LOW..HIGH'],
    [[...whole, '--hinge', '2'], '--hinge: expected one for each leaf (1), found 2'],
    [
      [...leaves('4', '4', '4'), ...hinges('1', '1', '1'), '--catch', '2'],
      '--leaf: expected one leaf or two, found 3',
    ],
    [[...whole, '--plan-gap', '4'], '--plan-gap: “4” is outside the catch range “2..3”'],
    [[...whole, '--plan-gap', '2..3'], '--plan-gap: “2..3” is a range: expected one length'],
    [[...whole, '--set', 'wide'], '--set: “wide” is not a length'],
    [[...whole, '--want', '48'], '--leaf and --want: expected one of them'],
    [[...whole, '--step', '1/8'], '--step goes with --want'],
    [[...turned, '--leaves', '1'], '--step is missing'],
    [[...turned, '--step', '1/8'], '--leaves is missing: expected --leaves 1 or 2'],
    [[...turned, '--step', '1/8', '--leaves', '3'], '--leaves: “3”: expected 1 or 2'],
    [
      [...turned, '--step', '1/8', '--leaves', '2'],
      '--hinge: expected one for each leaf (2), found 1',
    ],
    [
      [...turned, '--step', '50', '--leaves', '1'],
      'leaves no room for a leaf: hinges and latch take 4 3/8", expected at least 54 3/8"',
    ],
    [[...turned, '--step', '0', '--leaves', '1'], '--step: “0” is not above zero'],
    [[...whole, '--hinge', '1 7/8..'], '--hinge: “1 7/8..” has one end only'],
    [[...whole, '--leaf', '99999ft'], '--leaf: “99999ft” is too long'],
  ])('[K2] %j is refused in one line', async (args, reason) => {
    const said = await lath(['opening', ...args]);
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain(reason);
    expect(said.err).toMatch(/^[^\n]+\n$/);
  });

  it('says of posts set too close for the leaves how much is missing, never a negative gap', async () => {
    const close = await lath(['opening', ...whole, '--set', '45']);
    expect(close.code).toBe(1);
    expect(close.out).toContain(
      'set at 45": hinges and leaves are 7/8" too wide for it, too narrow by 2 7/8"\n',
    );
  });

  it('prints the sum for people', async () => {
    const said = await lath(['opening', ...whole, '--set', '48']);
    expect(said.out).toContain('Opening  48 3/8"\n');
    expect(said.out).toContain('set at 48": leaves 2 1/8" for the latch, it catches\n');
  });

  // leaves 56 1/4, hinge sets measured 1 3/4, 1 7/8 and 2, planned at 2, a drop-rod latch planned at
  // 2: common practice, no published source
  const double = (reach: string): string[] => [
    ...leaves('56 1/4', '56 1/4'),
    ...hinges('1 3/4..2', '1 3/4..2'),
    '--catch',
    reach,
    '--plan-gap',
    '2',
  ];

  it('[K12] two leaves of 56 1/4 with hinges up to 2 and a latch of 2 are 118 1/2, with its ranges', async () => {
    expect(await opening(...double('2..2 1/2'))).toMatchObject({
      target: 118.5,
      holdsFrom: 118.5,
      holdsTo: 118.5,
      mayFrom: 118,
      mayTo: 119,
    });
    const { likelyFrom, likelyTo } = await opening(...double('2..2 1/2'));
    // two hinges that vary by 1/8 about 1 7/8 each: the root of the sum of squares is 0.17678
    expect(likelyFrom).toBeCloseTo(112.5 + 3.75 + Math.hypot(0.125, 0.125) + 2, 12);
    expect(likelyTo).toBeCloseTo(112.5 + 3.75 - Math.hypot(0.125, 0.125) + 2.5, 12);
  });

  it('[K12] each end of a range adds up from what stands beside it', async () => {
    const range = /^(for sure|possible) +(\S[^;]*?) +to +(\S.*?") +(.+); (.+)$/gm;
    const { out } = await lath(['opening', ...double('2..3')]);
    const rows = [...out.matchAll(range)];
    expect(rows.length).toBe(2);
    const inchesIn = (text: string): number => {
      const length = parseLength(text);
      if (!length.ok) throw new Error(length.reason);
      return length.value;
    };
    for (const [, , from = '', to = '', low = '', high = ''] of rows) {
      for (const [end, sum] of [
        [from, low],
        [to, high],
      ] as const) {
        const parts = [...sum.matchAll(/[a-z]+ ([\d /]+")/g)].map(([, part = '']) =>
          inchesIn(part),
        );
        expect(parts.length).toBe(3);
        expect(parts.reduce((all, part) => all + part, 0)).toBe(inchesIn(end));
      }
    }
    expect(out).toContain('statistical');
  });

  it('[K12] set at 119 it may hold with a fork that reaches 2 1/2, and holds with one that reaches 3', async () => {
    const may = await lath(['opening', ...double('2..2 1/2'), '--set', '119']);
    expect(may.code).toBe(0);
    expect(may.out).toContain(
      'set at 119": leaves 2 1/2" for the latch, from 2 1/2" to 3", it may catch: measure the hinges\na latch that catches from 2 1/2" to 3" catches there for sure\n',
    );
    const sure = await lath(['opening', ...double('2..3'), '--set', '119']);
    expect(sure.out).toContain('set at 119": leaves 2 1/2" for the latch, it catches\n');
  });

  it('[K12] set at the nominal 10 ft that latch stands 3 1/2 open and does not catch', async () => {
    const said = await lath(['opening', ...double('2..2 1/2'), '--set', '10ft']);
    expect(said.code).toBe(1);
    expect(said.out).toContain('set at 120": leaves 3 1/2" for the latch, too wide by 1"\n');
  });

  it('[K12] a hinge that can be adjusted counts as gap, and is planned in its middle', async () => {
    const args = [...leaves('44'), '--adjustable-hinge', '1 1/2..2', '--catch', '2..2 1/2'];
    const told = await opening(...args);
    // 44, 1 3/4 and 2 1/4; from 44 + 1 1/2 + 2 to 44 + 2 + 2 1/2
    expect([told.target, told.holdsFrom, told.holdsTo]).toEqual([48, 47.5, 48.5]);
    expect(told.terms[0]).toMatchObject({ spread: 'adjustable', low: 1.5, high: 2 });
    const said = await lath(['opening', ...args, '--set', '48 1/2']);
    expect(said.out).toContain(
      'set at 48 1/2": leaves 2 3/4" for the latch, it catches with the hinges adjusted\n',
    );
  });

  it('[K12] what is given in metric is answered in metric, and comes to the same', async () => {
    const args = ['--leaf', '1000mm', '--hinge', '40..50mm', '--catch', '50..60mm'];
    const said = await lath(['opening', ...args, '--set', '1106mm']);
    expect(said.out).toContain('Opening  1105 mm\n');
    expect(said.out).toContain('for sure     1100 mm  to  1100 mm');
    expect(said.out).toContain('set at 1106 mm: leaves 56 mm for the latch, from 56 mm to 66 mm');
    expect((await opening(...args)).target).toBeCloseTo(1105 / 25.4, 9);
    const mixed = await lath(['opening', ...args, '--set', '43 1/2']);
    expect(mixed.out).toContain('Opening   43 1/2"\n');
  });
});
