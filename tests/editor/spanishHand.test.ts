import { afterAll, describe, expect, it, vi } from 'vitest';
import { spanish } from '../../src/phrases/es.ts';
import type { Saying } from '../../src/phrases/phrase.ts';
import type { Selection } from '../../src/store/selection.ts';
import type { Site } from '../../src/site/site.ts';

/** The tools of the yard and its list, in a language that is spoken before any of it is loaded. */
const yardIn = async (saying: Saying | null) => {
  vi.resetModules();
  const { englishOf, speakBy } = await import('../../src/phrases/phrase.ts');
  speakBy(saying);
  const { drive, driven, deskFor, press, move } = await import('./drive.ts');
  const { bare, fence, gateOn } = await import('../engine/plainYard.ts');
  const { drawFence } = await import('../../src/editor/tools/drawFence/drawFence.ts');
  const { drawArea } = await import('../../src/editor/tools/drawArea.ts');
  const { heard } = await import('../../src/editor/list/heard.ts');
  const { toolbox } = await import('../../src/editor/toolbox.ts');
  const { yardList } = await import('../../src/editor/list/yardList.ts');
  const { layOutSite } = await import('../../src/engine/layOutSite.ts');
  const { parseWay } = await import('../../src/units/parseWay.ts');
  const pool = drawArea('pool');
  const corners = [press(0, 0), press(120, 0), { do: 'finish' } as const];
  const fenced = drive(drawFence, driven(drawFence, bare), [press(0, 0), press(480, 0)]);
  const refused = drive(pool, driven(pool, bare), corners);
  const told = (site: Site, selection: Selection = null) => ({
    groups: yardList(site, layOutSite(site)),
    selection,
  });
  const short = gateOn(fenced.site, 0, { from: 'middle', offset: 0 });
  const longer = fence(short, [
    [0, 300],
    [120, 300],
  ]);
  return {
    englishOf,
    parseWay,
    site: fenced.site,
    labels: fenced.labels,
    said: refused.say,
    prompts: toolbox.map(({ label, machine }) => `${label}: ${machine.prompt(deskFor(bare))}`),
    starts: pool.prompt(driven(pool, bare).state, deskFor(bare)),
    snapped: drawFence
      .preview(drive(drawFence, driven(drawFence, longer), [move(60, 301)]).state, deskFor(longer))
      .flatMap((one) => (one.kind === 'text' ? [one.text] : [])),
    rows: told(short).groups.flatMap(({ rows }) => rows.map(({ words }) => words)),
    heard: heard(told(short), told(longer), null),
  };
};

afterAll(() => vi.resetModules());

describe('the yard in Spanish', () => {
  it('[A20] leaves the same document, and says of it what the English one does', async () => {
    const english = await yardIn(null);
    const spoken = await yardIn((key) => spanish[key]);
    expect(spoken.site).toEqual(english.site);
    expect(spoken.labels).toEqual(['Dibujar cerca']);
    expect(spoken.labels.map(spoken.englishOf)).toEqual(english.labels);
    expect(spoken.rows.map(spoken.englishOf)).toEqual(english.rows);
  });

  it('[A10] tells the hand what to do, what it is drawn to and what cannot be', async () => {
    const english = await yardIn(null);
    const spoken = await yardIn((key) => spanish[key]);
    for (const [n, said] of spoken.prompts.entries()) expect(said).not.toBe(english.prompts[n]);
    expect(spoken.starts).toBe('Tocar donde empieza la alberca');
    expect(spoken.said).toBe('Para la alberca hacen falta al menos 3 puntos y hay 2');
    expect(spoken.snapped).toContain('en la cerca');
  });

  it('[E71] hears as much as in English: letters of posts that change alone are nothing new', async () => {
    const english = await yardIn(null);
    const spoken = await yardIn((key) => spanish[key]);
    expect(spoken.heard).toContain('Nuevo: Línea de cerca');
    expect(spoken.heard).not.toContain('Ahora');
    expect(english.heard).not.toContain('Now');
    expect(spoken.heard.split('. ')).toHaveLength(english.heard.split('. ').length);
  });

  it('[A20] reads winds by their names and letters in Spanish and in English', async () => {
    const { parseWay } = await yardIn((key) => spanish[key]);
    for (const words of [
      ['noroeste', 'NO', 'northwest', 'nw'],
      ['oeste', 'o', 'west', 'W'],
      ['sureste', 'SE', 'south-east'],
    ]) {
      const [first, ...others] = words.map((word) => parseWay(word));
      expect(first?.ok).toBe(true);
      for (const other of others) expect(other).toEqual(first);
    }
  });
});
