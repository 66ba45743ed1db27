import type { ToolId } from '../store/toolId.ts';
import { machine } from './machine.ts';
import type { Machine } from './machine.ts';
import { drawArea } from './tools/drawArea.ts';
import { drawBoundary } from './tools/drawBoundary.ts';
import { drawFence } from './tools/drawFence/drawFence.ts';
import { drawHeightZone } from './tools/drawHeightZone.ts';
import { drawUtility } from './tools/drawUtility.ts';
import { pan } from './tools/pan.ts';
import { picture } from './tools/picture/picture.ts';
import { placeGate } from './tools/placeGate.ts';
import { placeMark } from './tools/placeMark.ts';
import { placeNote } from './tools/placeNote.ts';
import { placeShot } from './tools/placeShot.ts';
import { placeTree } from './tools/placeTree.ts';
import { select } from './tools/select/select.ts';
import { tape } from './tools/tape.ts';
import { phrase } from '../phrases/phrase.ts';

/** A tool as the yard offers it. */
export interface ToolEntry {
  readonly id: ToolId;
  /** Written on its button. */
  readonly label: string;
  /** The key that takes it up, one small letter. */
  readonly key: string;
  /** The tool in its idle state. */
  readonly machine: Machine;
}

/** Every tool, in the order in which they are offered. */
export const toolbox: readonly ToolEntry[] = [
  { id: 'select', label: phrase`Select`, key: 's', machine: machine(select) },
  { id: 'fence', label: phrase`Fence`, key: 'f', machine: machine(drawFence) },
  { id: 'gate', label: phrase`Gate`, key: 'g', machine: machine(placeGate) },
  { id: 'tape', label: phrase`Tape`, key: 'e', machine: machine(tape) },
  { id: 'mark', label: phrase`Mark`, key: 'x', machine: machine(placeMark) },
  { id: 'building', label: phrase`Building`, key: 'b', machine: machine(drawArea('building')) },
  { id: 'boundary', label: phrase`Boundary`, key: 'l', machine: machine(drawBoundary) },
  { id: 'paving', label: phrase`Paving`, key: 'p', machine: machine(drawArea('paving')) },
  { id: 'pool', label: phrase`Pool`, key: 'o', machine: machine(drawArea('pool')) },
  { id: 'keep-out', label: phrase`Keep-out`, key: 'k', machine: machine(drawArea('keep-out')) },
  {
    id: 'sight triangle',
    label: phrase`Sight triangle`,
    key: 'v',
    machine: machine(drawHeightZone('sight triangle')),
  },
  {
    id: 'front yard',
    label: phrase`Front yard`,
    key: 'y',
    machine: machine(drawHeightZone('front yard')),
  },
  { id: 'utility', label: phrase`Utility`, key: 'u', machine: machine(drawUtility) },
  { id: 'tree', label: phrase`Tree`, key: 't', machine: machine(placeTree) },
  { id: 'shot', label: phrase`Grade shot`, key: 'h', machine: machine(placeShot) },
  { id: 'note', label: phrase`Note`, key: 'n', machine: machine(placeNote) },
  { id: 'picture', label: phrase`Picture`, key: 'i', machine: machine(picture) },
  { id: 'pan', label: phrase`Pan`, key: 'm', machine: machine(pan) },
];
