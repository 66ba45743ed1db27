import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import {
  asItIs,
  englishOf,
  joined,
  keyOf,
  phrase,
  phraseOf,
  sentenceCase,
  speakBy,
} from '../../src/phrases/phrase.ts';

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

  it('[A20] tells what it says in English, its fillings and lists of them too', () => {
    saysBy({ 'Gate {1}': 'Portón {1}', '{1} is {2}': '{2}: {1}', open: 'abierto', ' and ': ' y ' });
    const gates = joined([phrase`Gate ${1}`, phrase`Gate ${2}`], phrase` and `);
    const said = sentenceCase(phrase`${gates} is ${phrase`open`}`);
    expect(said).toBe('Abierto: Portón 1 y Portón 2');
    expect(englishOf(said)).toBe('Gate 1 and Gate 2 is open');
    expect(englishOf('whatever else')).toBe('whatever else');
  });

  it('[A20] leaves a name of a document as it is, also where a phrase says just that', () => {
    saysBy({ 'Gate {1}': 'Portón {1}', '{1} is wide': '{1} es ancho' });
    expect(phrase`Gate ${1}`).toBe('Portón 1');
    const said = phrase`${asItIs('Portón 1')} is wide`;
    expect(said).toBe('Portón 1 es ancho');
    expect(englishOf(said)).toBe('Portón 1 is wide');
  });

  it('[A20] forgets nothing that the code says, however much is made after it', () => {
    saysBy({ Gate: 'Portón', 'line {1}': 'línea {1}' });
    const gate = phrase`Gate`;
    const many = Array.from({ length: 60_000 }, (_, n) => phrase`line ${n}`);
    expect(many.at(-1)).toBe('línea 59999');
    expect(englishOf(gate)).toBe('Gate');
    expect(englishOf(phrase`${asItIs('Portón')}`)).toBe('Portón');
  });

  it('[A20] in English is what it says', () => {
    expect(joined(['a', 'b', 'c'], ', ')).toBe('a, b, c');
    expect(sentenceCase('square corner')).toBe('Square corner');
    expect(englishOf(phrase`Gate ${1}`)).toBe('Gate 1');
  });
});
