import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';

/** How many of each sort of entity a file draws, in its drawing and in its blocks. */
export type DxfCounts = ReadonlyMap<string, number>;

const code = /^\s*\d{1,4}\s*$/;
const parts = new Set(['SECTION', 'ENDSEC', 'BLOCK', 'ENDBLK', 'EOF', 'SEQEND', 'VERTEX']);
const ends = new Set(['SEQEND', 'BLOCK', 'ENDBLK', 'ENDSEC']);
const drawing = new Set(['ENTITIES', 'BLOCKS']);

const pairsOf = (lines: readonly string[]): Parsed<number> => {
  const [begins = ''] = lines;
  if (!code.test(begins)) {
    return unread(`line 1: expected a DXF saved as text, found ${quotedText(begins)}`);
  }
  for (let n = 0; n + 1 < lines.length; n += 2) {
    const [group = '', value = ''] = [lines[n], lines[n + 1]];
    if (!code.test(group)) {
      return unread(`line ${n + 1}: expected a group code, found ${quotedText(group)}`);
    }
    if (Number(group) === 0 && value.trim() === 'EOF') return read(n);
  }
  return unread('ends too early: expected EOF at its end, so part of it is missing');
};

/**
 * What sorts of entities the text of a DXF file has. Unread with one line for a text that is none: it
 * is not in pairs of a group code and a value, or breaks off.
 */
export const dxfCounts = (text: string): Parsed<DxfCounts> => {
  const lines = text.split(/\r\n|\r|\n/);
  const end = pairsOf(lines);
  if (!end.ok) return end;
  const counts = new Map<string, number>();
  let section: string | null = null;
  let inPolyline = false;
  for (let n = 0; n < end.value; n += 2) {
    const [group, value = ''] = [Number(lines[n]), (lines[n + 1] ?? '').trim()];
    if (group !== 0) continue;
    if (value === 'VERTEX' && !inPolyline) {
      return unread(`line ${n + 2}: expected a VERTEX in a polyline only`);
    }
    inPolyline = value === 'POLYLINE' || (inPolyline && !ends.has(value));
    if (value === 'SECTION') {
      if (section !== null) return unread(`line ${n + 2}: expected the end of ${section}`);
      section = (lines[n + 3] ?? '').trim();
    } else if (value === 'ENDSEC') section = null;
    else if (section !== null && drawing.has(section) && !parts.has(value)) {
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
  }
  if (section !== null) return unread(`ends too early: expected the end of ${quotedText(section)}`);
  return read(counts);
};
