import { describe, expect, it } from 'vitest';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { changeObservation } from '../../../src/site/edits/changeObservation.ts';
import { fixMarks, freeMarks } from '../../../src/site/edits/fixMarks.ts';
import { joinMarks } from '../../../src/site/edits/joinMarks.ts';
import { removeLine } from '../../../src/site/edits/removeLine.ts';
import { removeObservations } from '../../../src/site/edits/removeObservations.ts';
import { setOrigin } from '../../../src/site/edits/setOrigin.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import { setTrusts } from '../../../src/site/edits/setTrusts.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { ObservationOf } from '../../../src/site/observation.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { tapesBetween } from '../../../src/site/tapeBetween.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const tape = (from: MarkId, to: MarkId, length = 240): ObservationOf<'tape'> => ({
  kind: 'tape',
  from,
  to,
  length: inches(length),
  trust: null,
  label: '',
});

describe('what was observed', () => {
  it('[S38] names marks that are there, none twice', () => {
    expect(() => addObservation(sampleSite, tape('mark:1', 'mark:99'))).toThrow(
      'observations › observation:1 › to: expected a mark of this site, found "mark:99"',
    );
    expect(() => addObservation(sampleSite, tape('mark:1', 'mark:1'))).toThrow(
      'observations › observation:1 › to: expected another mark than the rest of it, found "mark:1"',
    );
    expect(() => addObservation(sampleSite, tape('mark:1', 'mark:2', 0))).toThrow(
      /^observations › observation:1 › length: /,
    );
  });

  it('[S38] is refused in a file by where it is wrong', () => {
    const file = { ...sampleSite, observations: { 'observation:1': tape('mark:1', 'mark:99') } };
    expect(openDocument(file)).toMatchObject({
      ok: false,
      reason: 'observations › observation:1 › to: expected a mark of this site, found "mark:99"',
    });
  });

  it('[S38] can be read again and taken out', () => {
    const site = addObservation(sampleSite, tape('mark:1', 'mark:2'));
    const again = changeObservation(site, 'observation:1', { length: inches(252) });
    expect(again.observations['observation:1']).toMatchObject({ length: 252, from: 'mark:1' });
    expect(removeObservations(again, ['observation:1']).observations).toEqual({});
    expect(() => removeObservations(site, ['observation:7'])).toThrow(
      'observations: expected an observation of this site, found "observation:7"',
    );
  });

  it('[S39] a length said again changes the tape that is there, whichever way it was pulled', () => {
    const site = setTape(sampleSite, 'mark:1', 'mark:2', inches(240));
    const again = setTape(site, 'mark:2', 'mark:1', inches(250));
    expect(tapesBetween(again, 'mark:1', 'mark:2').map(({ tape: { length } }) => length)).toEqual([
      250,
    ]);
    expect(setTape(again, 'mark:1', 'mark:2', inches(250))).toBe(again);
  });

  it('[S37] goes with its mark', () => {
    const seen = addObservation(sampleSite, tape('mark:1', 'mark:2'));
    const site = addObservation(seen, tape('mark:7', 'mark:8'));
    expect(Object.keys(removeLine(site, 'line:2').observations)).toEqual(['observation:1']);
  });

  it('[S37] of a mark that is joined to another is of that one', () => {
    const seen = addObservation(sampleSite, tape('mark:4', 'mark:2'));
    const joined = joinMarks(seen, 'mark:4', 'mark:7');
    expect(joined.observations['observation:1']).toEqual(tape('mark:7', 'mark:2'));
    expect(openDocument(joined).ok).toBe(true);
    const between = addObservation(sampleSite, tape('mark:4', 'mark:7'));
    expect(joinMarks(between, 'mark:4', 'mark:7').observations).toEqual({});
  });

  it('[S37] a fixed mark stays fixed when another is joined to it', () => {
    const site = fixMarks(sampleSite, ['mark:4']);
    expect(joinMarks(site, 'mark:4', 'mark:7').marks['mark:7']?.fixed).toBe(true);
    expect(freeMarks(site, ['mark:4'])).toEqual(sampleSite);
  });

  it('[S38] trusts are above zero, and a place on earth is one', () => {
    expect(setTrusts(sampleSite, { tapeLeast: inches(1 / 8) }).trusts.tapeLeast).toBe(1 / 8);
    expect(() => setTrusts(sampleSite, { tapeLeast: inches(0) })).toThrow(/^trusts › tapeLeast: /);
    const placed = setOrigin(sampleSite, { latitude: 41, longitude: -93 });
    expect(placed.origin).toEqual({ latitude: 41, longitude: -93 });
    expect(() => setOrigin(sampleSite, { latitude: 95, longitude: 0 })).toThrow(
      /^origin › latitude/,
    );
    expect(setOrigin(placed, null)).toEqual(sampleSite);
  });
});
