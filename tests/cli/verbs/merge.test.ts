import { describe, expect, it } from 'vitest';
import { renameGate } from '../../../src/site/edits/renameGate.ts';
import { renameLine } from '../../../src/site/edits/renameLine.ts';
import type { GateId, LineId } from '../../../src/site/ids.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { lath } from '../lath.ts';
import { sampleSite } from '../sampleSites.ts';

const base = sampleSite('back-yard');

const opened = (text: unknown): Site => {
  const site = openSite(String(text));
  if (!site.ok) throw new Error(site.reason);
  return site.value;
};

const yard = opened(base);
const [gate] = Object.keys(yard.gates) as GateId[];
const [line] = Object.keys(yard.lines) as LineId[];
if (gate === undefined || line === undefined) throw new Error('expected a gate on a line');

const mine = saveSite(renameGate(renameLine(yard, line, 'Rear'), gate, 'Kitchen gate'));
const theirs = saveSite(renameGate(yard, gate, 'Shed gate'));
const files = { base, mine, theirs };
const call = ['merge', 'mine', 'theirs', '--base', 'base', '--out', 'both.site.json'];

const labelIn = (text: unknown) => opened(text).gates[gate]?.label;

describe('lath merge', () => {
  it('[C30] prints a conflict with both values and stops where no side was named', async () => {
    const said = await lath(call, files);
    expect([said.code, said.err]).toEqual([1, '']);
    expect(said.out).toBe(
      [
        'theirs: nothing that mine has not',
        'Gate Kitchen gate: name',
        '  mine:   Kitchen gate',
        '  theirs: Shed gate',
        '1 conflict; no side was named: --take mine or --take theirs',
        'both.site.json has mine of each',
        '',
      ].join('\n'),
    );
    const both = said.files.get('both.site.json');
    expect(labelIn(both)).toBe('Kitchen gate');
    expect(opened(both).lines[line]?.label).toBe('Rear');
  });

  it('[C30] takes the side that is named', async () => {
    const said = await lath([...call, '--take', 'theirs', '--json'], files);
    expect([said.code, said.err]).toEqual([0, '']);
    expect(labelIn(said.files.get('both.site.json'))).toBe('Shed gate');
    expect(JSON.parse(said.out)).toMatchObject({
      came: [],
      taken: 'theirs',
      conflicts: [{ field: 'label', what: 'Gate Kitchen gate: name' }],
    });
  });

  it('[C30] says what came where nothing is in conflict', async () => {
    const said = await lath(['merge', 'base', 'mine', '--base', 'base', '--out', 'b'], files);
    expect([said.code, said.out]).toEqual([
      0,
      'theirs: 1 fence line changed, 1 gate changed\nwrote b\n',
    ]);
    expect(said.files.get('b')).toBe(mine);
  });

  it('[C31] is the same from either side', async () => {
    const there = ['merge', 'theirs', 'mine', '--base', 'base', '--out', 'both.site.json'];
    const [one, other] = [
      await lath([...call, '--take', 'mine'], files),
      await lath([...there, '--take', 'theirs'], files),
    ];
    expect(one.files.get('both.site.json')).toBe(other.files.get('both.site.json'));
  });

  it('[C31] without what both came from asks about every difference', async () => {
    const said = await lath(['merge', 'mine', 'theirs', '--out', 'b'], files);
    expect(said.code).toBe(1);
    expect(said.out.match(/: name\n/g)).toHaveLength(2);
  });

  it('[K2] refuses a side that there is not, and a file that is not there', async () => {
    const side = await lath([...call, '--take', 'ours'], files);
    expect([side.code, side.err]).toEqual([2, '--take: “ours”: expected one of mine, theirs\n']);
    const gone = await lath(['merge', 'mine', 'gone', '--out', 'b'], files);
    expect([gone.code, gone.err]).toEqual([2, 'gone: no such file\n']);
  });
});
