import { byQpdf } from './poppler.ts';

/** A place on a page in points, y up. */
export interface PdfPoint {
  readonly x: number;
  readonly y: number;
}

/** What is drawn on one layer of a page: straight pieces, and middles of whole circles; points, y up. */
export interface DrawnPaths {
  readonly segments: readonly (readonly [PdfPoint, PdfPoint])[];
  readonly circles: readonly PdfPoint[];
}

/** The operators of a page, as qpdf writes them out. */
const operatorsOf = (bytes: Uint8Array, page: number): string[] => {
  const only = ['--pages', '.', String(page), '--', '--qdf', '--object-streams=disable'];
  const text = Buffer.from(byQpdf(bytes, only)).toString('latin1');
  const streams = [...text.matchAll(/\nstream\n([\s\S]*?)\nendstream/g)].map(([, own = '']) => own);
  const content = streams.find((own) => own.includes('/OC /'));
  if (content === undefined) throw new Error(`page ${page}: expected a page with layers`);
  return content.split('\n');
};

const numbersOf = (line: string): number[] => line.trim().split(/\s+/).slice(0, -1).map(Number);

/** What a subpath is: a circle where it comes back to its start by curves alone, else straight pieces. */
const kept = (points: readonly PdfPoint[], curves: number, into: { circles: PdfPoint[] }): void => {
  const [first, last] = [points[0], points.at(-1)];
  if (curves < 4 || first === undefined || last === undefined) return;
  if (Math.hypot(first.x - last.x, first.y - last.y) > 1e-3) return;
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  into.circles.push({
    x: (Math.min(...xs) + Math.max(...xs)) / 2,
    y: (Math.min(...ys) + Math.max(...ys)) / 2,
  });
};

/** The paths of one layer of a page of a PDF, read from its operators and from nothing of ours. */
export const drawnPaths = (bytes: Uint8Array, page: number, layer: string): DrawnPaths => {
  const segments: [PdfPoint, PdfPoint][] = [];
  const circles: PdfPoint[] = [];
  let points: PdfPoint[] = [];
  let curves = 0;
  let marks: string[] = [];
  const end = (): void => {
    kept(points, curves, { circles });
    [points, curves] = [[], 0];
  };
  for (const line of operatorsOf(bytes, page)) {
    if (/ (BDC|BMC)$/.test(line)) marks = [...marks, line];
    if (line.trim() === 'EMC') marks = marks.slice(0, -1);
    if (!marks.some((mark) => mark.startsWith(`/OC /${layer} `))) continue;
    const numbers = numbersOf(line);
    const [x = 0, y = 0] = numbers.slice(-2);
    if (line.endsWith(' m')) {
      end();
      points = [{ x, y }];
    } else if (line.endsWith(' l')) {
      const from = points.at(-1);
      // a circle begins with a piece of no length
      if (from !== undefined && Math.hypot(from.x - x, from.y - y) > 1e-3)
        segments.push([from, { x, y }]);
      points.push({ x, y });
    } else if (line.endsWith(' c')) {
      curves += 1;
      points.push({ x, y });
    }
  }
  end();
  return { segments, circles };
};
