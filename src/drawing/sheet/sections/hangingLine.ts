import type { GateLayout } from '../../../engine/layout.ts';
import { trussFrom } from '../../../engine/structure/leafWeight.ts';
import type { Gate } from '../../../site/gate.ts';
import type { Site } from '../../../site/site.ts';
import { notesFor, type NoteFor } from '../../../trade/hangingNotes.ts';
import { phrase } from '../../../phrases/phrase.ts';

const noteKeys = (site: Site, gate: Gate, { leaves, slides }: GateLayout): Set<NoteFor> => {
  const latch = gate.latch === null ? undefined : site.hardware[gate.latch];
  const meet = gate.way.kind === 'swing' && leaves.length > 1;
  const so: readonly (readonly [boolean, NoteFor])[] = [
    [leaves.length > 0, 'leaf that turns'],
    [leaves.some(({ width }) => width >= trussFrom), 'wide leaf'],
    [leaves.length > 1, 'two leaves'],
    [meet && (gate.receiver !== null || latch?.kind === 'drop rod'), 'drop rod'],
    [slides.length > 0, 'leaf that rolls'],
  ];
  return new Set(so.flatMap(([is, key]) => (is ? [key] : [])));
};

/** What to mind when a gate is hung, as one paragraph; nothing for a gap, in which nothing hangs. */
export const hangingLine = (layout: GateLayout, site: Site): string => {
  const gate = site.gates[layout.id];
  const notes = gate === undefined ? [] : notesFor(noteKeys(site, gate, layout));
  return notes.length === 0 ? '' : phrase`Hanging: ${notes.join(' ')}`;
};
