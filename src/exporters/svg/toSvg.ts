import type { Atom, Text } from '../../drawing/atom.ts';
import type { Palette } from '../../drawing/ink.ts';
import { letterExtent } from '../../drawing/lettering/textBox.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import type { Outline, Step } from '../../drawing/outline.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { toDegrees } from '../../units/radians.ts';

/** Four decimals of an inch are a fortieth of the thinnest line. */
const n4 = (value: number): string => String(Number(value.toFixed(4)));

/** What XML 1.0 has no place for, escaped or not: controls, halves of pairs, and two that are none. */
const unfit = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const escaped = (text: string): string =>
  text
    .replace(unfit, '?')
    .replace(
      /[&<>"]/g,
      (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign,
    );

type ArcStep = Extract<Step, { go: 'arc' }>;

/** An arc in pieces of at most half a turn, since SVG cannot close a circle on itself. */
const arcPath = ({ x, y, radius, start, sweep }: ArcStep, begun: boolean): string => {
  const on = (angle: number) =>
    `${n4(x + radius * Math.cos(angle))} ${n4(y - radius * Math.sin(angle))}`;
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / Math.PI - 1e-9));
  const turn = sweep > 0 ? 0 : 1;
  const pieces = Array.from({ length: count }, (_, n) => {
    const to = on(start + (sweep * (n + 1)) / count);
    return `A${n4(radius)} ${n4(radius)} 0 0 ${turn} ${to}`;
  });
  return `${begun ? 'L' : 'M'}${on(start)}${pieces.join('')}`;
};

const pathOf = (outline: Outline): string =>
  outline
    .map((step, n) => {
      if (step.go === 'close') return 'Z';
      if (step.go === 'arc') return arcPath(step, n > 0);
      return `${step.go === 'move' ? 'M' : 'L'}${n4(step.x)} ${n4(step.y)}`;
    })
    .join('');

const textElement = (text: Text, palette: Palette): string => {
  const { at, size, angle, align, baseline, weight, ink, halo } = text;
  const down = baseline === 'middle' ? (letterExtent.capital / 2) * size : 0;
  const anchor = { left: 'start', middle: 'middle', right: 'end' }[align];
  const turn = angle === 0 ? '' : ` rotate(${n4(-toDegrees(angle))})`;
  // whatever font a reader has in place of ours, no text grows into its neighbour
  const length = n4(textWidth(text.text, size, weight));
  const under =
    halo === 'paper'
      ? ` stroke="${palette.paper}" stroke-width="${n4(size * 0.28)}" paint-order="stroke"`
      : '';
  return (
    `<text transform="translate(${n4(at.x)} ${n4(at.y)})${turn}" y="${n4(down)}" ` +
    `font-size="${n4(size)}" font-weight="${weight === 'bold' ? 600 : 400}" ` +
    `text-anchor="${anchor}" textLength="${length}" lengthAdjust="spacingAndGlyphs" fill="${palette[ink]}"${under}>${escaped(text.text)}</text>`
  );
};

/** Elements for atoms in their order; `name` makes the clips' names unique on the page. */
const elements = (atoms: readonly Atom[], palette: Palette, name: string): string[] =>
  atoms.map((atom, n) => {
    switch (atom.do) {
      case 'stroke': {
        const { ink, width, dash } = atom.pen;
        const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map(n4).join(' ')}"` : '';
        return `<path d="${pathOf(atom.outline)}" fill="none" stroke="${palette[ink]}" stroke-width="${n4(width)}"${dashes}/>`;
      }
      case 'fill': {
        const opacity = atom.opacity < 1 ? ` fill-opacity="${n4(atom.opacity)}"` : '';
        return `<path d="${pathOf(atom.outline)}" fill="${palette[atom.ink]}" fill-rule="evenodd"${opacity}/>`;
      }
      case 'text':
        return textElement(atom, palette);
      case 'clip': {
        const id = `${name}-${n}`;
        const inner = elements(atom.atoms, palette, id).join('\n');
        return (
          `<clipPath id="${id}"><path d="${pathOf(atom.outline)}" clip-rule="evenodd"/></clipPath>\n` +
          `<g clip-path="url(#${id})">\n${inner}\n</g>`
        );
      }
    }
  });

/** The layers of a page as groups in their order; one name that comes again is numbered. */
const groups = ({ layers }: Page, palette: Palette): string[] =>
  layers.map(({ name, atoms }, n) => {
    const before = layers.slice(0, n).filter((other) => other.name === name).length;
    const id = before === 0 ? name : `${name}-${before + 1}`;
    return `<g id="${id}" data-layer="${name}">\n${elements(atoms, palette, `clip-${n}`).join('\n')}\n</g>`;
  });

/**
 * One page as an SVG document at its true size, or as large as `pixels` to be rastered; each of its
 * layers is a group that says which. Letters name the font Barlow; it is not embedded.
 */
export const toSvg = (
  page: Page,
  pixels?: { readonly width: number; readonly height: number },
): string => {
  const { width, height } = page.paper;
  const box = `viewBox="0 0 ${n4(width)} ${n4(height)}"`;
  const size =
    pixels === undefined
      ? `width="${n4(width)}in" height="${n4(height)}in" ${box}`
      : `width="${pixels.width}" height="${pixels.height}" ${box} preserveAspectRatio="none"`;
  const palette = palettes.paper;
  const { language = 'en' } = page;
  const lang = language === 'en' ? '' : ` lang="${language}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg"${lang} ${size} font-family="Barlow, sans-serif" stroke-linejoin="round">`,
    `<title>${escaped(page.title)}</title>`,
    `<rect width="${n4(width)}" height="${n4(height)}" fill="${palette.paper}"/>`,
    ...groups(page, palette),
    '</svg>\n',
  ].join('\n');
};
