import { describe, expect, it } from 'vitest';
import { closeLine } from '../../src/site/edits/closeLine.ts';
import { stands } from '../../src/store/stands.ts';
import type { Selection } from '../../src/store/selection.ts';
import { gatedYard } from '../editor/gatedYard.ts';

const site = gatedYard({ from: 'middle', offset: 0 });

describe('stands', () => {
  it('[H9] what is in the document stands, of every kind, and nothing selected does', () => {
    const there: Selection[] = [
      null,
      { kind: 'mark', id: 'mark:house1' },
      { kind: 'line', id: 'line:fence' },
      { kind: 'leg', line: 'line:fence', id: 'vertex:fence2' },
      { kind: 'gate', id: 'gate:1' },
      { kind: 'feature', id: 'feature:house' },
    ];
    expect(there.map((selection) => stands(site, selection))).toEqual(there.map(() => true));
  });

  it('[H9] what is not in the document does not, nor a leg from the end of an open line', () => {
    const gone: Selection[] = [
      { kind: 'mark', id: 'mark:9' },
      { kind: 'line', id: 'line:9' },
      { kind: 'leg', line: 'line:9', id: 'vertex:fence2' },
      { kind: 'leg', line: 'line:fence', id: 'vertex:fence3' },
      { kind: 'gate', id: 'gate:9' },
      { kind: 'feature', id: 'feature:9' },
    ];
    expect(gone.map((selection) => stands(site, selection))).toEqual(gone.map(() => false));
    const closing: Selection = { kind: 'leg', line: 'line:fence', id: 'vertex:fence3' };
    expect(stands(closeLine(site, 'line:fence'), closing)).toBe(true);
  });
});
