import { describe, expect, it } from 'vitest';
import { openingsSection } from '../../../../src/drawing/sheet/sections/openingsSection.ts';
import { columnsIn, paginate } from '../../../../src/drawing/sheet/flow/paginate.ts';
import { laid } from '../../../../src/drawing/sheet/papers.ts';
import { sheetFrame } from '../../../../src/drawing/sheet/sheetFrame.ts';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import type { Site } from '../../../../src/site/site.ts';
import { gap, wayYard } from '../../../engine/wayYard.ts';
import { sampleYards } from '../../sampleYards.ts';
import { textsOf } from '../../textsOf.ts';

const sample = (wanted: string): Site => {
  const yard = sampleYards.find(({ name }) => name === wanted);
  if (yard === undefined) throw new Error(`expected ${wanted}`);
  return yard.site;
};

/** The texts of each page that the details of all gates of a site take, on Letter. */
const details = (site: Site): string[][] => {
  const { content } = sheetFrame(laid('letter', 'portrait'));
  const [, ...cards] = openingsSection(site, layOutSite(site), columnsIn(content));
  return paginate(cards, content).map(({ atoms }) => textsOf(atoms).map(({ text }) => text));
};

describe('openingsSection', () => {
  it('[D61] on an upright Letter page stands one gate, and under the schedule the first that has room', () => {
    // a walk gate and a double drive gate with a drop rod and its receiver
    const yard = sample('back-yard');
    const { content } = sheetFrame(laid('letter', 'portrait'));
    const stacks = openingsSection(yard, layOutSite(yard), columnsIn(content));
    const pages = paginate(stacks, content).map(({ atoms }) =>
      textsOf(atoms).map(({ text }) => text),
    );
    const [first = [], second = []] = pages;
    expect(pages.length).toBe(2);
    expect(first.join(' ')).toMatch(/Opening schedule.*2 Walk gate, B–C: hold/);
    expect(second.join(' ')).toMatch(/1 Drive gate, H–I: hold/);
    expect(second.join(' ')).toContain('Receiver: ');
    expect(pages.flat().filter((text) => text.startsWith('Hanging: ')).length).toBe(2);
  });

  it.each(['long-boundary', 'contractors-yard'])(
    '[D61] the schedule of %s shares its page on lying Letter with a gate',
    (name) => {
      const yard = sample(name);
      const { content } = sheetFrame(laid('letter', 'landscape'));
      const stacks = openingsSection(yard, layOutSite(yard), columnsIn(content));
      const [first] = paginate(stacks, content);
      expect(first?.anchors).toHaveLength(1);
      const texts = textsOf(first?.atoms ?? []).map(({ text }) => text);
      expect(texts.join(' ')).toMatch(/Opening schedule.*hold .* in = 1 ft/);
    },
  );

  it.each(sampleYards)('[D152] the gates of $name keep the order of the schedule', (yard) => {
    const gates = Object.keys(yard.layout.gates);
    for (const way of ['portrait', 'landscape'] as const) {
      const column = columnsIn(sheetFrame(laid('letter', way)).content);
      const [schedule, ...cards] = openingsSection(yard.site, yard.layout, column);
      const anchors = cards.map(({ anchor }) => anchor);
      const [first, ...rest] = anchors;
      expect(rest).toEqual(gates.filter((id) => id !== first));
      if (schedule === undefined || first === gates[0]) continue;
      const used = [schedule.head, ...schedule.rows].reduce((sum, { height }) => sum + height, 0);
      expect(used).toBeLessThan(column.height / 2);
    }
  });

  it('[D152] where less than half of the column would stay empty no gate is out of its turn', () => {
    const yard = sample('plant-nursery');
    const layout = layOutSite(yard);
    const [first] = Object.keys(layout.gates);
    const column = columnsIn(sheetFrame(laid('letter', 'portrait')).content);
    const [schedule, early] = openingsSection(yard, layout, column);
    if (schedule === undefined || early === undefined) throw new Error('expected gates');
    expect(early.anchor).not.toBe(first);
    const heightOf = ({ head, rows }: typeof early): number =>
      [head, ...rows].reduce((sum, { height }) => sum + height, 0);
    // the same card has just room, in less than half of a lower column
    const left = heightOf(early) + 0.01;
    const height = heightOf(schedule) + early.gap + left;
    expect(left).toBeLessThan(height / 2);
    expect(openingsSection(yard, layout, { ...column, height })[1]?.anchor).toBe(first);
  });

  it('[D62] a gap has its clear width, no ruler and no working', () => {
    const [words = [], ...more] = details(wayYard(gap));
    expect(more).toEqual([]);
    expect(words).toContain('clear');
    expect(words.join(' ')).not.toMatch(/Hanging|What takes up|holds|called/);
  });

  it('[D52] posts of one outside diameter are named together, others each with its own', () => {
    const [words = []] = details(wayYard(gap));
    expect(words.join(' ')).toContain('Gap without a gate, posts B and C 2.875" OD.');
  });
});
