import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partsOf } from '../../../src/site/merge/partsOf.ts';
import { siteOfParts } from '../../../src/site/merge/siteOfParts.ts';
import { randomSite } from '../../engine/randomSite.ts';
import { after, anyMoves } from '../edits/anyEdits.ts';
import { sampleSite } from '../sampleSite.ts';

const none: ReadonlySet<string> = new Set();

describe('a document taken apart', () => {
  it('[S92] is the same document when it is put together again', () => {
    fc.assert(
      fc.property(anyMoves, randomSite, fc.boolean(), (moves, random, drawn) => {
        const site = moves.reduce(after, drawn ? random : sampleSite);
        const gates = new Set(Object.keys(site.gates));
        expect(siteOfParts(partsOf(site, none), site.lineage)).toEqual(site);
        expect(siteOfParts(partsOf(site, gates), site.lineage)).toEqual(site);
      }),
    );
  });
});
