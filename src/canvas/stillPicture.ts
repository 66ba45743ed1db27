import type { Palette } from '../drawing/ink.ts';
import type { Group } from '../drawing/group.ts';
import {
  differenceOf,
  drawFromNothing,
  redrawn,
  type PaperDrawing,
  type Redrawn,
} from '../drawing/paperDrawing.ts';
import type { Pad } from '../editor/view.ts';
import type { Bounds } from '../geometry/bounds.ts';
import type { View } from '../store/view.ts';
import type { LengthSystem } from '../units/lengthStyle.ts';
import { bitByBit, type BitByBit } from './bitByBit.ts';
import { padProjection } from './padProjection.ts';
import { padRoom } from './padRoom.ts';
import { paintDrawing } from './paintDrawing.ts';
import { newSnapshot, placeSnapshot, type Snapshot } from './snapshot.ts';

/** The still drawing and what it is painted with. */
export interface Still {
  readonly groups: readonly Group[];
  readonly palette: Palette;
  readonly system: LengthSystem;
  /** CSS pixels for a paper inch. */
  readonly inch: number;
  /** False while the lettering is still loading; the picture is painted again when it is here. */
  readonly lettered: boolean;
  /** Whether pictures lie under it: then its paper is with them. */
  readonly over: 'paper' | 'pictures';
}

/** A drawing on the paper of the view in which it was begun. */
interface Standing {
  readonly drawing: PaperDrawing;
  readonly anchor: View;
}

/** What is to be seen. */
interface Wanted {
  readonly still: Still;
  readonly view: View;
  readonly pad: Pad;
}

/** So many primitives in sight are drawn anew at once; more bit by bit, while the old picture stands. */
const mostAtOnce = 1500;
/** A picture that was gone on with is drawn from nothing when nothing has changed for so long, milliseconds. */
const settling = 500;

const sameView = (a: View, b: View): boolean => a.scale === b.scale && a.x === b.x && a.y === b.y;

const samePaint = (a: Still, b: Still): boolean =>
  a.palette === b.palette &&
  a.system === b.system &&
  a.lettered === b.lettered &&
  a.over === b.over;

const samePad = (a: Pad, b: Pad): boolean => a.width === b.width && a.height === b.height;

/** Where letters go for a view, on the paper of the view in which a drawing was begun. */
const lookOf = (view: View, anchor: View, pad: Pad, inch: number) => {
  const { window = null, shown = null } = padRoom(pad, inch);
  const [x, y] = [(view.x - anchor.x) / inch, (view.y - anchor.y) / inch];
  const moved = (bounds: Bounds | null): Bounds | null =>
    bounds === null
      ? null
      : {
          minX: bounds.minX - x,
          minY: bounds.minY - y,
          maxX: bounds.maxX - x,
          maxY: bounds.maxY - y,
        };
  return { window: moved(window), shown: moved(shown) };
};

/**
 * The still drawing as a picture, a little larger than the pad, that is moved while the view moves. An edit repaints
 * only where something looks different; a view that comes to rest at the same scale keeps what is wholly in sight;
 * all else is drawn from nothing, bit by bit where that takes long, so that the hand never waits.
 */
export class StillPicture {
  private wanted: Wanted | null = null;
  private standing: Standing | null = null;
  private picture: Snapshot | null = null;
  private running: { readonly work: BitByBit; readonly for: Wanted } | null = null;
  private settle: ReturnType<typeof setTimeout> | undefined;

  private readonly canvas: HTMLCanvasElement;
  private readonly changed: () => void;

  /** It is painted on a canvas; `changed` is called when a later picture is ready. */
  constructor(canvas: HTMLCanvasElement, changed: () => void) {
    this.canvas = canvas;
    this.changed = changed;
  }

  /** Shows a drawing; while the view moves as it was taken, and where nothing is taken yet in this view. */
  show(still: Still, view: View, pad: Pad): void {
    if (pad.width === 0 || pad.height === 0) return;
    const before = this.wanted;
    const now = { still, view: before?.view ?? view, pad };
    this.wanted = now;
    if (before === null || before.still.inch !== still.inch) {
      this.standing = null;
      return this.begin(now);
    }
    const other = before.still.groups !== still.groups || !samePad(before.pad, pad);
    if (other) this.reconcile(now);
    if (!samePaint(before.still, still)) this.paintWhole(now);
  }

  /** Takes the picture anew where the view has come to rest. */
  rest(view: View): void {
    if (this.wanted === null || sameView(this.wanted.view, view)) return;
    this.wanted = { ...this.wanted, view };
    this.reconcile(this.wanted);
  }

  /** Lays the picture where a view has it. */
  place(view: View): void {
    if (this.picture !== null) placeSnapshot(this.picture, view);
  }

  /** Nothing more is drawn. */
  close(): void {
    this.running?.work.stop();
    clearTimeout(this.settle);
  }

  private paintWhole({ still, view, pad }: Wanted): void {
    // a drawing of another scale is on its way out: the next one comes in these colours
    if (this.standing?.anchor.scale !== view.scale) return;
    this.picture = newSnapshot(this.canvas, view, pad);
    paintDrawing(this.picture, this.standing, still, null);
  }

  private adopt(drawing: PaperDrawing, from: Wanted): void {
    const { wanted } = this;
    this.running = null;
    this.standing = { drawing, anchor: from.view };
    this.paintWhole({ ...from, still: wanted?.still ?? from.still });
    if (wanted !== null && wanted !== from) this.reconcile(wanted);
    this.changed();
  }

  private begin(now: Wanted): void {
    this.running?.work.stop();
    clearTimeout(this.settle);
    const { still, view, pad } = now;
    const room = padRoom(pad, still.inch);
    const steps = drawFromNothing(still.groups, padProjection(view, still.inch), room);
    const work = bitByBit(steps, (drawing) => this.adopt(drawing, now));
    if (!work.done()) this.running = { work, for: now };
  }

  /** Whether the picture is of this view and as large as the pad. */
  private isTakenFor({ view, pad }: Wanted): boolean {
    const { picture } = this;
    return picture !== null && sameView(picture.view, view) && samePad(picture.pad, pad);
  }

  private settleLater(): void {
    clearTimeout(this.settle);
    this.settle = setTimeout(() => {
      if (this.wanted !== null && this.running === null) this.begin(this.wanted);
    }, settling);
  }

  /** Goes on from the drawing that stands, if that is less work than to begin anew. */
  private reconcile(now: Wanted): void {
    const { running, standing } = this;
    // one at this scale is under way: what differs by then is drawn when it is there
    if (running !== null && running.for.view.scale === now.view.scale) return;
    if (standing === null || standing.anchor.scale !== now.view.scale) return this.begin(now);
    const { drawing, anchor } = standing;
    const look = lookOf(now.view, anchor, now.pad, now.still.inch);
    const difference = differenceOf(drawing, now.still.groups, look);
    if (difference.inSight > mostAtOnce) {
      // sharp at once, with the letters of before
      if (!this.isTakenFor(now)) this.paintWhole(now);
      return this.begin(now);
    }
    this.goOn(now, redrawn(drawing, now.still.groups, look, difference));
  }

  private goOn(now: Wanted, { drawing, changed }: Redrawn): void {
    const { picture, standing } = this;
    if (standing === null) return;
    this.standing = { ...standing, drawing };
    if (picture !== null && this.isTakenFor(now))
      paintDrawing(picture, this.standing, now.still, changed);
    else this.paintWhole(now);
    if (changed.length > 0) this.settleLater();
  }
}
