import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Opening } from '../../../src/engine/opening.ts';
import { Working } from '../../../src/screens/openings/Working.tsx';
import type { LengthStyle } from '../../../src/units/lengthStyle.ts';
import { term } from '../../engine/gate/term.ts';
import { heldBetween } from '../../engine/heldBetween.ts';

const hinge = { ...term('hinge', 1.625, 1.875, 1.875), label: 'Hinge' };
const opening = (holdsFrom: number, holdsTo: number): Opening => ({
  ...heldBetween(holdsFrom, holdsTo, 48),
  terms: [hinge],
});

const textOf = (shown: Opening, style: LengthStyle): string =>
  renderToStaticMarkup(<Working opening={shown} style={style} name="Walk gate" />)
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', "'")
    .replace(/\s+/g, ' ');

describe('Working', () => {
  it('writes where an opening holds as the sheets do, rounded inwards', () => {
    const shown = textOf(opening(47.4, 48.4), { system: 'inches', fraction: 8 });
    expect(shown).toContain('Holds from 47 1/2" to 48 3/8"');
  });

  it('loses no 1/8 in on a site in hundredths of a foot or in metres', () => {
    const feet = textOf(opening(47.5, 48.5), { system: 'decimal feet', fraction: 8 });
    expect(feet).toContain('Hinge 1 5/8" 1 7/8" 1 7/8" measured');
    expect(feet).toContain('Holds from 47 1/2" to 48 1/2"');
    const metres = textOf(opening(47.5, 48.5), { system: 'm', fraction: 8 });
    // 1.625 and 1.875 in at 25.4 mm to the inch are 41.275 and 47.625 mm; 47.5 and 48.5 in are
    // 1206.5 and 1231.9 mm, rounded inwards
    expect(metres).toContain('Hinge 41 mm 48 mm 48 mm measured');
    expect(metres).toContain('Holds from 1207 mm to 1231 mm');
  });

  it('says so where nothing holds for sure', () => {
    expect(textOf(opening(48.1, 48), { system: 'feet', fraction: 8 })).toContain(
      'No opening holds for sure',
    );
  });
});
