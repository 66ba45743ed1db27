import { afterAll, expect, it, vi } from 'vitest';
import { spanish } from '../../../src/phrases/es.ts';
import type { Saying } from '../../../src/phrases/phrase.ts';

/** A merge of two copies in a language that is spoken before any of it is loaded. */
const mergeIn = async (saying: Saying | null) => {
  vi.resetModules();
  const { englishOf, speakBy } = await import('../../../src/phrases/phrase.ts');
  speakBy(saying);
  const { cameTexts } = await import('../../../src/site/merge/cameTexts.ts');
  const { merged } = await import('../../../src/site/merge/merged.ts');
  const { addMark } = await import('../../../src/site/edits/addMark.ts');
  const { moveMark } = await import('../../../src/site/edits/moveMark.ts');
  const { removeLine } = await import('../../../src/site/edits/removeLine.ts');
  const { renameGate } = await import('../../../src/site/edits/renameGate.ts');
  const { setGateLeaf } = await import('../../../src/site/edits/setGateLeaf.ts');
  const { sampleSite: base } = await import('../sampleSite.ts');
  const { inches } = await import('../../../src/units/inches.ts');
  const { oneWidth } = await import('../../../src/site/oneWidth.ts');
  const wide = setGateLeaf(renameGate(base, 'gate:1', 'left'), 'gate:1', 'leaf:1', {
    widths: oneWidth(inches(47.5)),
    from: 'measured',
  });
  const narrow = setGateLeaf(renameGate(base, 'gate:1', 'right'), 'gate:1', 'leaf:1', {
    widths: oneWidth(inches(47)),
    from: 'copied',
  });
  const changed = merged(base, wide, addMark(narrow, { x: 0, y: 60 }));
  const gone = merged(base, removeLine(base, 'line:1'), moveMark(base, 'mark:1', { x: 9, y: 9 }));
  const conflicts = [...changed.conflicts, ...gone.conflicts];
  const words = conflicts.flatMap(({ what, mine, theirs }) => [what, mine.words, theirs.words]);
  const came = cameTexts(changed);
  return {
    sites: [changed.site, gone.site],
    ids: conflicts.map(({ id }) => id),
    words,
    came,
    english: [...words, ...came].map(englishOf),
  };
};

afterAll(() => vi.resetModules());

it('[A20] merges the same in Spanish, and says what it says in English', async () => {
  const english = await mergeIn(null);
  const spoken = await mergeIn((key) => spanish[key]);
  expect(spoken.sites).toEqual(english.sites);
  expect(spoken.ids).toEqual(english.ids);
  expect(spoken.english).toEqual([...english.words, ...english.came]);
  expect(spoken.words).toContain('Portón left: nombre');
  expect(spoken.words).toContain('Portón left, hoja 1: anchos');
  expect(spoken.words.join('; ')).toMatch(/de medido.*de copiado/);
  expect(spoken.came).toEqual(['agregado: 1 marca']);
});

it('[A20] takes no name that a person gave for a word of its own', async () => {
  const { words } = await mergeIn((key) => spanish[key]);
  expect(words.slice(0, 3)).toEqual(['Portón left: nombre', 'left', 'right']);
});
