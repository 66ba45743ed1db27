import { describe, expect, it } from 'vitest';
import { addHardware } from '../../../src/site/edits/addHardware.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeHardware } from '../../../src/site/edits/changeHardware.ts';
import { changeJob } from '../../../src/site/edits/changeJob.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setLengths } from '../../../src/site/edits/setLengths.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const spec = sampleSite.specs['spec:1'];
const hinge = sampleSite.hardware['hardware:1'];
if (spec === undefined || hinge === undefined) throw new Error('the sample lost its parts');

const takes = (low: number, planned: number, high: number) => ({
  low: inches(low),
  planned: inches(planned),
  high: inches(high),
});

describe('specs and hardware', () => {
  it('[S18] a site that carries one under the id keeps its own', () => {
    expect(addSpec(sampleSite, 'spec:1', { ...spec, label: 'Other' })).toBe(sampleSite);
    expect(addHardware(sampleSite, 'hardware:1', { ...hinge, label: 'Other' })).toBe(sampleSite);
  });

  it('are added under their ids and changed in part', () => {
    const tall = addSpec(sampleSite, 'spec:tall', { ...spec, fabricHeight: inches(72) });
    expect(tall.specs['spec:tall']?.fabricHeight).toBe(72);
    const wide = changeSpec(tall, 'spec:tall', { maxBay: inches(96), topRail: null });
    expect(wide.specs['spec:tall']).toEqual({
      ...spec,
      fabricHeight: 72,
      maxBay: 96,
      topRail: null,
    });
    expect(wide.specs['spec:1']).toBe(spec);
    const more = addHardware(sampleSite, 'hardware:new', hinge);
    expect(more.hardware['hardware:new']).toEqual(hinge);
    const measured = changeHardware(more, 'hardware:new', {
      takes: takes(1, 1.125, 1.25),
      from: 'measured',
    });
    expect(measured.hardware['hardware:new']).toMatchObject({ from: 'measured', kind: 'hinge' });
    expect(measured.hardware['hardware:1']).toBe(hinge);
  });

  it('[S9] what they say already leaves the very same site', () => {
    expect(changeSpec(sampleSite, 'spec:1', { ...spec })).toBe(sampleSite);
    expect(changeHardware(sampleSite, 'hardware:1', { takes: { ...hinge.takes } })).toBe(
      sampleSite,
    );
  });

  it('[S11] what cannot be done is told in one line', () => {
    const throwing: [() => Site, string][] = [
      [
        () => changeSpec(sampleSite, 'spec:9', {}),
        'specs: expected a fence spec of this site, found "spec:9"',
      ],
      [
        () => changeSpec(sampleSite, 'spec:1', { maxBay: inches(0) }),
        'specs › spec:1 › maxBay: expected more than 0, found 0',
      ],
      [
        () => addSpec(sampleSite, 'spec:' as 'spec:1', spec),
        'specs: expected an id such as "spec:12", found "spec:"',
      ],
      [
        () => addHardware(sampleSite, 'hardware:a b', hinge),
        'hardware: expected an id such as "hardware:12", found "hardware:a b"',
      ],
      [
        () => changeHardware(sampleSite, 'hardware:1', { takes: takes(3, 2, 1) }),
        'hardware › hardware:1 › takes: expected low, planned and high in rising order, found an object',
      ],
      [
        () => changeHardware(sampleSite, 'hardware:9', {}),
        'hardware: expected a hinge or latch of this site, found "hardware:9"',
      ],
    ];
    for (const [act, line] of throwing) expect(act).toThrow(new RangeError(line));
  });
});

describe('the job and the way lengths are written', () => {
  it('are changed in part, the drawing is shared', () => {
    const site = setLengths(changeJob(sampleSite, { customer: 'Somebody' }), { system: 'mm' });
    expect(site.job).toEqual({ ...sampleSite.job, customer: 'Somebody' });
    expect(site.lengths).toEqual({ system: 'mm', fraction: 8 });
    expect(site.marks).toBe(sampleSite.marks);
  });

  it('[S9] what they say already leaves the very same site', () => {
    expect(changeJob(sampleSite, { name: sampleSite.job.name })).toBe(sampleSite);
    expect(setLengths(sampleSite, { fraction: 8 })).toBe(sampleSite);
  });

  it('[S11] what cannot be written is told in one line', () => {
    expect(() => changeJob(sampleSite, { name: 'x'.repeat(201) })).toThrow(
      new RangeError(`job › name: expected at most 200 characters, found "${'x'.repeat(39)}…"`),
    );
    expect(() => setLengths(sampleSite, { fraction: 3 as 2 })).toThrow(
      new RangeError('lengths › fraction: expected 2 or 4 or 8 or 16 or 32, found 3'),
    );
  });
});
