import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How many of each sort of entity a file draws, in its drawing and in its blocks. */
export type DxfCounts = ReadonlyMap<string, number>;

const parts = new Set(['SECTION', 'ENDSEC', 'BLOCK', 'ENDBLK', 'EOF', 'SEQEND', 'VERTEX']);
const ends = new Set(['SEQEND', 'BLOCK', 'ENDBLK', 'ENDSEC']);
const drawing = new Set(['ENTITIES', 'BLOCKS']);

/**
 * What sorts of entities the lines of a DXF file (`dxfLines`) have. Unread with one line where a section
 * or a polyline is not whole.
 */
export const dxfCounts = (lines: readonly string[]): Parsed<DxfCounts> => {
  const counts = new Map<string, number>();
  let section: string | null = null;
  let inPolyline = false;
  for (let n = 0; n < lines.length; n += 2) {
    const [group, value = ''] = [Number(lines[n]), (lines[n + 1] ?? '').trim()];
    if (group !== 0) continue;
    if (value === 'VERTEX' && !inPolyline) {
      return unread(phrase`line ${n + 2}: expected a VERTEX in a polyline only`);
    }
    inPolyline = value === 'POLYLINE' || (inPolyline && !ends.has(value));
    if (value === 'SECTION') {
      if (section !== null) return unread(phrase`line ${n + 2}: expected the end of ${section}`);
      section = (lines[n + 3] ?? '').trim();
    } else if (value === 'ENDSEC') section = null;
    else if (section !== null && drawing.has(section) && !parts.has(value)) {
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
  }
  if (section !== null)
    return unread(phrase`ends too early: expected the end of ${quotedText(section)}`);
  return read(counts);
};
