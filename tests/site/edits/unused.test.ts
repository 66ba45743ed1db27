import { describe, expect, it } from 'vitest';
import { addHardware } from '../../../src/site/edits/addHardware.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { closeLine } from '../../../src/site/edits/closeLine.ts';
import { openLine } from '../../../src/site/edits/openLine.ts';
import { removeHardware } from '../../../src/site/edits/removeHardware.ts';
import { removeSpec } from '../../../src/site/edits/removeSpec.ts';
import { sampleSite } from '../sampleSite.ts';

describe('opening a closed line', () => {
  it('[S21] the last leg goes; closed again it is the line that it was', () => {
    const ring = closeLine(sampleSite, 'line:1');
    expect(openLine(ring, 'line:1')).toEqual(sampleSite);
    expect(openLine(sampleSite, 'line:1')).toBe(sampleSite);
  });

  it('[S11] [S21] not while a gate stands on it', () => {
    expect(() => openLine(sampleSite, 'line:2')).toThrow(
      new RangeError('The last leg has Pen gate on it: expected none, move or delete it first'),
    );
  });
});

describe('what nothing is built with', () => {
  const [spec] = Object.values(sampleSite.specs);
  const part = sampleSite.hardware['hardware:1'];
  if (spec === undefined || part === undefined) throw new Error('expected a spec and a part');

  it('[S22] goes when it is removed', () => {
    expect(removeSpec(addSpec(sampleSite, 'spec:2', spec), 'spec:2')).toEqual(sampleSite);
    const more = addHardware(sampleSite, 'hardware:9', part);
    expect(removeHardware(more, 'hardware:9')).toEqual(sampleSite);
  });

  it('[S11] [S22] stays while a line or gate has it', () => {
    expect(() => removeSpec(sampleSite, 'spec:1')).toThrow(
      new RangeError('specs: expected one that no line is built to, found "spec:1"'),
    );
    for (const id of ['hardware:1', 'hardware:2', 'hardware:3'] as const) {
      expect(() => removeHardware(sampleSite, id)).toThrow(/no gate has/);
    }
    expect(() => removeSpec(sampleSite, 'spec:7')).toThrow(/a fence spec of this site/);
  });
});
