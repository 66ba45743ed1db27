import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, expect, it } from 'vitest';
import { phrase, speakBy } from '../../src/phrases/phrase.ts';
import { spot, withElements } from '../../src/screens/withElements.tsx';

afterEach(() => speakBy(null));

const held = () =>
  renderToStaticMarkup(
    <p>
      {withElements(phrase`Holds from ${spot(0)} to ${spot(1)}.`, [
        <b key="from">A</b>,
        <b key="to">B</b>,
      ])}
    </p>,
  );

it('[A2] elements stand in a phrase where the holes are that they fill', () => {
  expect(held()).toBe('<p>Holds from <b>A</b> to <b>B</b>.</p>');
});

it('[A2] another language has the elements of a phrase where its own order wants them', () => {
  speakBy((key) => ({ 'Holds from {1} to {2}.': 'Hasta {2} desde {1}' })[key]);
  expect(held()).toBe('<p>Hasta <b>B</b> desde <b>A</b></p>');
});

it('[A1] a phrase without elements is as it is, and a spot without one shows nothing', () => {
  expect(renderToStaticMarkup(<p>{withElements('nothing', [])}</p>)).toBe('<p>nothing</p>');
  expect(renderToStaticMarkup(<p>{withElements(`a${spot(3)}b`, [])}</p>)).toBe('<p>ab</p>');
});
