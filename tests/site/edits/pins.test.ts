import { describe, expect, it } from 'vitest';
import { anchoredAt } from '../../../src/site/anchor.ts';
import { addPin } from '../../../src/site/edits/addPin.ts';
import { changePin } from '../../../src/site/edits/changePin.ts';
import { openLine } from '../../../src/site/edits/openLine.ts';
import { removeLine } from '../../../src/site/edits/removeLine.ts';
import { removePin } from '../../../src/site/edits/removePin.ts';
import { removeVertex } from '../../../src/site/edits/removeVertex.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setLegGrade } from '../../../src/site/edits/setLegGrade.ts';
import { splitLeg } from '../../../src/site/edits/splitLeg.ts';
import type { PinId } from '../../../src/site/ids.ts';
import { legAt } from '../../../src/site/legGround.ts';
import { legTrack } from '../../../src/site/legTrack.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const spotOf = (site: Site, id: PinId) => {
  const pin = site.pins[id];
  const line = pin === undefined ? undefined : site.lines[pin.line];
  if (pin === undefined || line === undefined) throw new Error(`no pin ${id}`);
  const { x, y } = anchoredAt(pin.anchor, legTrack(site, line, legAt(line, pin.leg)));
  return { x: expect.closeTo(x, 9) as number, y: expect.closeTo(y, 9) as number };
};

describe('pins', () => {
  it('[S26] stay on their ground when their line is turned, split or joined', () => {
    const was = spotOf(sampleSite, 'pin:1');
    expect(spotOf(reverseLine(sampleSite, 'line:1'), 'pin:1')).toEqual(was);
    const split = splitLeg(sampleSite, 'line:1', 'vertex:3', { x: 720, y: -300 });
    expect(spotOf(split, 'pin:1')).toEqual(was);
    expect(split.pins['pin:1']?.leg).not.toBe('vertex:3');
    const [added] = Object.keys(split.lines['line:1']?.path ?? {}).filter(
      (id) => !Object.hasOwn(sampleSite.lines['line:1']?.path ?? {}, id),
    );
    expect(spotOf(removeVertex(split, 'line:1', added as `vertex:${string}`), 'pin:1')).toEqual(
      was,
    );
  });

  it('[S26] go with their line, and with the leg that an opened line loses', () => {
    expect(Object.keys(removeLine(sampleSite, 'line:1').pins)).toEqual(['pin:2']);
    const last = addPin(
      { ...sampleSite, gates: {} },
      {
        line: 'line:2',
        leg: 'vertex:7',
        anchor: { from: 'start', offset: inches(50) },
        holds: { kind: 'post' },
      },
    );
    expect(Object.keys(openLine(last, 'line:2').pins)).toEqual(['pin:1', 'pin:2']);
  });

  it('[S11] one that cannot be is refused in one line', () => {
    const pin = sampleSite.pins['pin:2'];
    if (pin === undefined) throw new Error('expected a pin');
    expect(() => addPin(sampleSite, { ...pin, leg: 'vertex:1' })).toThrow(
      /^pins › pin:3 › leg: expected the start of a leg of line:2, found "vertex:1"$/,
    );
    expect(() =>
      changePin(sampleSite, 'pin:2', { holds: { kind: 'clear', reach: inches(0) } }),
    ).toThrow(RangeError);
    expect(() => removePin(sampleSite, 'pin:9')).toThrow(/expected a pin of this site/);
    expect(removePin(sampleSite, 'pin:2').pins).not.toHaveProperty('pin:2');
  });
});

describe('legs whose fabric is stepped', () => {
  const stepped = setLegGrade(sampleSite, 'line:1', 'vertex:2', 'step');
  const legs = (site: Site) => Object.keys(site.lines['line:1']?.stepped ?? {});

  it('[S27] stay stepped when their line is turned, split or joined', () => {
    expect(legs(stepped)).toEqual(['vertex:2']);
    expect(legs(setLegGrade(stepped, 'line:1', 'vertex:2', 'follow'))).toEqual([]);
    expect(legs(reverseLine(stepped, 'line:1'))).toEqual(['vertex:3']);
    expect(reverseLine(reverseLine(stepped, 'line:1'), 'line:1')).toEqual(stepped);
    const split = splitLeg(stepped, 'line:1', 'vertex:2', { x: 360, y: -480 });
    expect(legs(split)).toHaveLength(2);
    expect(legs(removeVertex(stepped, 'line:1', 'vertex:2'))).toEqual([]);
    expect(() => setLegGrade(sampleSite, 'line:1', 'vertex:4', 'step')).toThrow(RangeError);
  });
});
