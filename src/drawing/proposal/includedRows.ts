import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import { grouped } from '../../engine/load/grouped.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { plainLength } from '../../units/plainLength.ts';
import { buildWords } from './buildWords.ts';
import { gateWords } from './gateWords.ts';
import { phrase } from '../../phrases/phrase.ts';

/** One thing that a price includes, and how much or how many of it. Texts as they are printed. */
export interface IncludedRow {
  readonly what: string;
  readonly amount: string;
}

/** What is included, thing by thing and with what is alike in kind together. */
export interface Included {
  readonly each: readonly IncludedRow[];
  readonly alike: readonly IncludedRow[];
}

/** A piece of what is included: its own name, its kind, and how long it is or how many it counts for. */
interface Piece {
  readonly label: string;
  readonly kind: string;
  readonly size: number;
}

/** Fence of a line without its gates, centre to centre of its posts, inches. */
const fenced = ({ runs }: LineLayout): number =>
  runs
    .flatMap(({ spaces }) => spaces)
    .reduce((sum, space) => (space.kind === 'bay' ? sum + space.length : sum), 0);

const builds = (site: Site, layout: Layout): Piece[] =>
  Object.values<LineLayout>(layout.lines).flatMap((line): Piece[] => {
    const spec = site.specs[site.lines[line.id]?.spec ?? 'spec:'];
    const size = fenced(line);
    if (spec === undefined || size === 0) return [];
    return [{ label: spec.label.trim(), kind: buildWords(spec, site.lengths.system), size }];
  });

const gates = (site: Site, layout: Layout): Piece[] =>
  Object.values<GateLayout>(layout.gates).map((gate) => {
    const drawn = site.gates[gate.id];
    const label = drawn?.label.trim() ?? '';
    return { label, kind: gateWords(gate, drawn, site.lengths.system), size: 1 };
  });

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Pieces that have one name on one row each, written by `name` and `write`. */
const rows = (
  pieces: readonly Piece[],
  name: (piece: Piece) => string,
  write: (size: number) => string,
): IncludedRow[] =>
  grouped(pieces, name).flatMap((same) => {
    const [first] = same;
    if (first === undefined) return [];
    const size = same.reduce((sum, one) => sum + one.size, 0);
    return [{ what: capital(name(first)), amount: write(size) }];
  });

const ownName = ({ label, kind }: Piece): string => (label === '' ? kind : `${label}: ${kind}`);
const kindName = ({ kind }: Piece): string => kind;

/**
 * What the price of a site includes, in plain words: every build with its length, every gate, old fence that
 * is taken out. `each` has builds and gates by their names, `alike` puts those of one kind together.
 */
export const includedRows = (site: Site, layout: Layout): Included => {
  const { system } = site.lengths;
  const long = (size: number): string => plainLength(inches(size), system);
  const old: Inches = site.work.tearOut;
  const tearOut: IncludedRow[] =
    old > 0
      ? [{ what: phrase`Old fence taken out and hauled away`, amount: plainLength(old, system) }]
      : [];
  const [fences, hung] = [builds(site, layout), gates(site, layout)];
  const by = (name: (piece: Piece) => string): IncludedRow[] => [
    ...rows(fences, name, long),
    ...rows(hung, name, String),
    ...tearOut,
  ];
  return { each: by(ownName), alike: by(kindName) };
};
