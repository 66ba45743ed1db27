import type { LineLayout, Run } from '../../../engine/layout.ts';
import { fromHook } from '../../../engine/posts/fromHook.ts';
import { stationInPlan } from '../../../engine/posts/stationInPlan.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { moveGate } from '../../../site/edits/moveGate.ts';
import type { GateId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { roundLength } from '../../../units/roundLength.ts';

/** What the tape shows at the post of a gate that is the nearer to the hook. */
export interface GateReading {
  readonly run: Run;
  readonly hook: 'start' | 'end';
  /** Exact, from the hook. */
  readonly exact: Inches;
  /** As it is written. */
  readonly reading: Inches;
}

/** The reading of a gate on its line; null for a gate that is not placed there. */
export const gateReading = (site: Site, line: LineLayout, gate: GateId): GateReading | null => {
  const hook = site.lines[line.id]?.hook ?? 'start';
  for (const run of line.runs) {
    const at = run.spaces.findIndex((space) => space.kind === 'gate' && space.gate === gate);
    const post = at < 0 ? undefined : run.posts[hook === 'start' ? at : at + 1];
    if (post === undefined) continue;
    const exact = fromHook(run, post.station, hook);
    return { run, hook, exact, reading: roundLength(exact, site.lengths) };
  }
  return null;
};

/**
 * The site with a gate moved along its leg, so that the tape shows `wanted` at its nearer post.
 * It stays anchored from where it was. RangeError beyond the run.
 */
export const moveToReading = (
  site: Site,
  id: GateId,
  { run, hook, exact }: GateReading,
  wanted: Inches,
): Site => {
  if (wanted < 0 || wanted > run.length) {
    const write = (length: Inches): string => formatLength(length, site.lengths);
    throw new RangeError(
      phrase`Reading ${write(wanted)}: expected one from 0 to ${write(run.length)}`,
    );
  }
  const gate = site.gates[id];
  if (gate === undefined) throw new RangeError(phrase`gates: expected one there, found “${id}”`);
  const [wish, was] = [wanted, exact].map((read) => stationInPlan(run, fromHook(run, read, hook)));
  const along = (wish ?? 0) - (was ?? 0);
  const { from, offset } = gate.anchor;
  const moved = inches(offset + (from === 'end' ? -along : along));
  return moveGate(site, id, { from, offset: moved });
};
