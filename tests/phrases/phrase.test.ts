import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { keyOf, phrase, phraseOf, speakBy } from '../../src/phrases/phrase.ts';

const saysBy = (catalogue: Readonly<Record<string, string>>): void =>
  speakBy((key) => catalogue[key]);

describe('a phrase', () => {
  afterEach(() => speakBy(null));

  it('[A1] is what the code says', () => {
    expect(phrase`Post ${'A'} of ${3}`).toBe('Post A of 3');
    expect(phrase`Fence`).toBe('Fence');
    expect(phrase``).toBe('');
  });

  it('[A1] in English is its template, whatever fills it', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (a, b) => {
        expect(phrase`from ${a} to ${b}.`).toBe(`from ${a} to ${b}.`);
      }),
    );
  });

  it('[A2] has its fillings where another language wants them', () => {
    saysBy({ 'Post {1} of {2}': '{2}: poste {1}' });
    expect(phrase`Post ${'A'} of ${'B'}`).toBe('B: poste A');
  });

  it('[A2] takes nothing in a filling for a hole', () => {
    saysBy({ 'Post {1} of {2}': '{2}: poste {1}' });
    expect(phrase`Post ${'{2}'} of ${'{1}'}`).toBe('{1}: poste {2}');
  });

  it('[A3] is in English where the language has nothing', () => {
    saysBy({});
    expect(phrase`Gate ${1}`).toBe('Gate 1');
  });

  it('[A4] has a key for each of two meanings', () => {
    saysBy({ Open: 'abierto', 'file|Open': 'Abrir' });
    expect([phrase`Open`, phraseOf('file')`Open`]).toEqual(['abierto', 'Abrir']);
    expect(keyOf(['Open'], 'file')).toBe('file|Open');
  });

  it('[A1] speaks the next language at the same place of the code', () => {
    const said = () => phrase`Gate`;
    expect(said()).toBe('Gate');
    saysBy({ Gate: 'Portón' });
    expect(said()).toBe('Portón');
    speakBy(null);
    expect(said()).toBe('Gate');
  });
});
