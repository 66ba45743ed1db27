import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { pdfInfoFor } from '../../../src/exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { siteFile } from '../../../src/site/siteFile.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { sampleYards } from '../../drawing/sampleYards.ts';
import { textsOf } from '../../drawing/textsOf.ts';
import { drawnPaths, type PdfPoint } from './drawnPaths.ts';
import { readPdf } from './readPdf.ts';
import { sheetFonts } from './sheetFonts.ts';

/** Ground inches to a point of paper, as the page itself says its scale. */
const scaleOn = (texts: readonly string[]): number => {
  const words = texts.join(' ');
  const feet = /Scale 1 in = (\d+) ft/.exec(words)?.[1];
  const share = /Scale (\d+)(?:\/(\d+))? in = 1 ft/.exec(words);
  const metric = /Scale 1 : (\d+)/.exec(words)?.[1];
  if (feet !== undefined) return (Number(feet) * 12) / 72;
  if (share !== null) return (12 * Number(share[2] ?? 1)) / Number(share[1]) / 72;
  if (metric !== undefined) return Number(metric) / 72;
  throw new Error(`expected a scale in “${words.slice(0, 200)}”`);
};

/** How the ground was moved to the page: the move by which most places meet a circle. */
const movedBy = (
  places: readonly SitePoint[],
  circles: readonly PdfPoint[],
  scale: number,
): PdfPoint => {
  const [first] = places;
  if (first === undefined) throw new Error('expected a post');
  const meets = (move: PdfPoint): number =>
    places.filter(({ x, y }) =>
      circles.some(
        (circle) =>
          Math.hypot(x / scale + move.x - circle.x, y / scale + move.y - circle.y) * scale < 0.05,
      ),
    ).length;
  const moves = circles.map(({ x, y }) => ({ x: x - first.x / scale, y: y - first.y / scale }));
  const counts = moves.map(meets);
  const best = moves[counts.indexOf(Math.max(...counts))];
  if (best === undefined) throw new Error('expected circles on the page');
  return best;
};

describe.each(sampleYards)('the plan of $name, measured on the page', ({ site, layout, text }) => {
  const pages = sheetSet(site, layout, { paper: 'letter', siteText: text });
  const file = siteFile(site);
  const info = pdfInfoFor(site, { sort: 'Crew sheet', siteText: text, file });
  // the cover and the plan; links to other pages have no place in it
  const two = pages.slice(0, 2).map((page) => ({ ...page, links: [] }));
  const made = toPdf(two, sheetFonts, info, file);
  const allTexts = pages.flatMap((page) => textsOf(pageAtoms(page)).map((own) => own.text));

  it('[X70] every post stands within 0.01 in of the ground where the layout has it', async () => {
    const { pages: read } = await readPdf(await made);
    const scale = scaleOn(read[1]?.texts ?? []);
    const { circles } = drawnPaths(await made, 2, 'fence');
    const posts = [...layout.posts.values()];
    const move = movedBy(
      posts.slice(0, 12).map(({ at }) => at),
      circles,
      scale,
    );
    // the first post gives the move: all others are measured from it
    const off = posts.map(({ at }) =>
      Math.min(
        ...circles.map(
          ({ x, y }) => Math.hypot(at.x / scale + move.x - x, at.y / scale + move.y - y) * scale,
        ),
      ),
    );
    expect(Math.max(...off)).toBeLessThan(0.01);
  });

  it('[X70] a straight run with a chain has a dimension line of its length', async () => {
    const { pages: read } = await readPdf(await made);
    const scale = scaleOn(read[1]?.texts ?? []);
    const { segments } = drawnPaths(await made, 2, 'dimensions');
    const lengths = segments.map(([a, b]) => Math.hypot(a.x - b.x, a.y - b.y) * scale);
    const left = allTexts.join(' ');
    const runs = Object.values(layout.lines).flatMap(({ runs: own }) => own);
    const missing = runs.filter((run) => {
      const ends = [run.posts[0], run.posts.at(-1)].map((one) =>
        layout.posts.get(one?.post ?? 'post:'),
      );
      const [a, b] = ends;
      if (run.bow !== 0 || a === undefined || b === undefined || a === b) return false;
      const reach = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y);
      // an end that stands off its mark is dimensioned from the mark
      const whole = Math.hypot(run.start.x - run.end.x, run.start.y - run.end.y);
      const found = lengths.some(
        (length) => Math.abs(length - reach) < 0.01 || Math.abs(length - whole) < 0.01,
      );
      return !found && !left.includes(`${a.tag}–${b.tag}`);
    });
    expect(missing.map(({ id }) => id)).toEqual([]);
  });
});
