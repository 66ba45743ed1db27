import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMark } from '../../src/site/edits/addMark.ts';
import { addObservation } from '../../src/site/edits/addObservation.ts';
import { extendLine } from '../../src/site/edits/extendLine.ts';
import { fixMarks } from '../../src/site/edits/fixMarks.ts';
import { removeCorner } from '../../src/site/edits/removeCorner.ts';
import { removeFeature } from '../../src/site/edits/removeFeature.ts';
import { removeLine } from '../../src/site/edits/removeLine.ts';
import { removeVertex } from '../../src/site/edits/removeVertex.ts';
import { renameMark } from '../../src/site/edits/renameMark.ts';
import { setTape } from '../../src/site/edits/setTape.ts';
import { startLine } from '../../src/site/edits/startLine.ts';
import type { MarkId } from '../../src/site/ids.ts';
import { verticesOf } from '../../src/site/pathOrder.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { after, anyMoves } from './edits/anyEdits.ts';
import { sampleSite } from './sampleSite.ts';

/**
 * The sample with one fence of two legs more: from the house corner mark:1 to mark:12 and mark:13.
 * mark:11 is a pin with a name on which nothing stands.
 */
const fenced: Site = [
  { x: 300, y: -900 },
  { x: 600, y: -900 },
].reduce<Site>(
  (site, to) => extendLine(site, 'line:3', to),
  startLine(sampleSite, 'spec:1', 'mark:1'),
);
const [corner, end]: readonly MarkId[] = ['mark:12', 'mark:13'];
const vertexAt = (site: Site, mark: MarkId) =>
  verticesOf(site.lines['line:3']?.path ?? {}).find((vertex) => vertex.mark === mark)?.id ??
  'vertex:1';

/** Which of the two own marks of the fence are there once it is removed. */
const left = (site: Site): MarkId[] => {
  const without = removeLine(site, 'line:3');
  return [corner, end].flatMap((id) => (id !== undefined && id in without.marks ? [id] : []));
};

const tape = (site: Site, from: MarkId, to: MarkId): Site => setTape(site, from, to, inches(500));

describe('marks that lose their last line', () => {
  it('[S41] stay where they have a name or are fixed, and no others', () => {
    expect(left(fenced)).toEqual([]);
    expect(left(renameMark(fenced, 'mark:13', 'gate stake'))).toEqual(['mark:13']);
    expect(left(renameMark(fenced, 'mark:13', '  '))).toEqual([]);
    expect(left(fixMarks(fenced, ['mark:12']))).toEqual(['mark:12']);
  });

  it('[S41] stay where a tape ties them to a mark that stays, with the tape', () => {
    const tied = tape(fenced, 'mark:11', 'mark:13');
    expect(left(tied)).toEqual(['mark:13']);
    expect(removeLine(tied, 'line:3').observations).toEqual(tied.observations);
    // a corner that is tied to one that is tied
    expect(left(tape(tape(fenced, 'mark:13', 'mark:2'), 'mark:11', 'mark:12'))).toEqual([
      'mark:12',
      'mark:13',
    ]);
  });

  it('[S41] go with what was read along their legs', () => {
    const taped = tape(tape(fenced, 'mark:1', 'mark:12'), 'mark:12', 'mark:13');
    const squared = addObservation(taped, {
      kind: 'square',
      at: 'mark:12',
      from: 'mark:1',
      to: 'mark:13',
      trust: null,
      label: '',
    });
    expect(left(squared)).toEqual([]);
    expect(removeLine(squared, 'line:3').observations).toEqual({});
  });

  it('[S41] go with what ties them to none but each other', () => {
    const both = extendLine(fenced, 'line:3', { x: 600, y: -400 });
    const tied = tape(both, 'mark:12', 'mark:14');
    const without = removeLine(tied, 'line:3');
    expect(['mark:12', 'mark:13', 'mark:14'].filter((id) => id in without.marks)).toEqual([]);
    expect(without.observations).toEqual({});
  });

  it('[S41] need every mark that ties them', () => {
    const square = (from: MarkId, to: MarkId) =>
      addObservation(fenced, { kind: 'square', at: 'mark:13', from, to, trust: null, label: '' });
    expect(left(square('mark:11', 'mark:12'))).toEqual([]);
    expect(left(square('mark:11', 'mark:2'))).toEqual(['mark:13']);
  });

  it('[S41] stay where satellites found them', () => {
    const found = addObservation(fenced, {
      kind: 'fix',
      mark: 'mark:13',
      x: 600,
      y: -900,
      accuracy: inches(60),
      label: '',
    });
    expect(left(found)).toEqual(['mark:13']);
  });
});

it('[S41] a vertex or a corner that is taken out leaves its mark where something keeps it', () => {
  const tied = tape(fenced, 'mark:11', 'mark:12');
  expect(Object.keys(removeVertex(tied, 'line:3', vertexAt(tied, 'mark:12')).marks)).toContain(
    'mark:12',
  );
  const taped = tape(fenced, 'mark:12', 'mark:13');
  const taken = removeVertex(taped, 'line:3', vertexAt(taped, 'mark:13'));
  expect(Object.keys(taken.marks)).not.toContain('mark:13');
  expect(taken.observations).toEqual({});
  const [house] = verticesOf(pathOf(sampleSite)).filter(({ mark }) => mark === 'mark:5');
  const named = renameMark(sampleSite, 'mark:5', 'spigot');
  const cut = removeCorner(addCorner(named), 'feature:1', house?.id ?? 'vertex:1');
  expect(cut.marks['mark:5']?.label).toBe('spigot');
  expect(removeFeature(named, 'feature:1').marks['mark:5']?.label).toBe('spigot');
});

const pathOf = (site: Site) => {
  const house = site.features['feature:1'];
  return house !== undefined && 'path' in house ? house.path : {};
};

/** The house with a corner to spare. */
const addCorner = (site: Site): Site => {
  const house = site.features['feature:1'];
  if (house === undefined || !('path' in house)) throw new Error('expected a house');
  const more = addMark(site, { x: 200, y: 100 });
  return {
    ...more,
    features: {
      ...more.features,
      'feature:1': {
        ...house,
        path: { ...house.path, 'vertex:99': { mark: 'mark:12', order: 'z' } },
      },
    },
  };
};

it('[S41] no mark with a name goes but by itself or onto another', () => {
  fc.assert(
    fc.property(anyMoves, (moves) => {
      moves.reduce<Site>((site, move) => {
        const next = after(site, move);
        const named = Object.entries(site.marks).filter(([, { label }]) => label !== '');
        const gone = named.filter(([id]) => !(id in next.marks)).map(([id]) => id);
        if (move.verb !== 'removeMark' && move.verb !== 'joinMarks') expect(gone).toEqual([]);
        return next;
      }, sampleSite);
    }),
  );
});
