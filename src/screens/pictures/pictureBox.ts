import { carried } from '../../geometry/carried.ts';
import { composed } from '../../geometry/composed.ts';
import type { Projective } from '../../geometry/projective.ts';
import { similarityOf } from '../../geometry/similarityOf.ts';
import type { StraightPlan } from '../../geometry/straightPlan.ts';
import type { Tie } from '../../geometry/tie.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { PictureId, UnderlayId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { tiesOf } from '../../site/tiesOf.ts';
import type { Underlay } from '../../site/underlay.ts';
import { createCell, type Cell } from '../../store/cell.ts';
import { current } from '../../store/history.ts';
import { blobOf } from '../../store/pictureBytes.ts';
import type { PictureShelf } from '../../store/pictureShelf.ts';
import type { SiteStore } from '../../store/siteStore.ts';
import { told } from '../../store/told.ts';
import type { PictureWorker } from './askWorker.ts';

/** What there is of an underlay to be painted. */
export type Shown =
  | { readonly is: 'reading' }
  | { readonly is: 'missing' }
  | { readonly is: 'unreadable'; readonly why: string }
  | {
      readonly is: 'here';
      readonly bitmap: ImageBitmap;
      /** How it was made straight; null for a picture as it was taken. */
      readonly plan: StraightPlan | null;
    };

/** What is shown, of which picture it is, and the ties that this had when it was looked at. */
export interface PictureEntry {
  readonly picture: PictureId;
  readonly ties: readonly Tie[];
  readonly shown: Shown;
}

/** The pictures at hand: their bytes and their pixels. */
export interface PictureBox {
  readonly shown: Cell<ReadonlyMap<UnderlayId, PictureEntry>>;
  /** The bytes of a picture, from wherever they are; null where they are not on this device. */
  readonly bytes: (id: PictureId) => Promise<Blob | null>;
  /** Takes bytes in hand, and on the device; one line where it does not keep them, else null. */
  readonly put: (id: PictureId, picture: Blob) => Promise<string | null>;
  /** Decodes files that are brought. */
  readonly worker: PictureWorker;
}

interface Parts {
  readonly site: SiteStore;
  readonly shelf: PictureShelf;
  readonly worker: PictureWorker;
}

/** So many pictures are shown with all their pixels; of more each has half as many each way. */
const sharp = 4;
/** Pixels on the longer side. */
const sides = { sharp: 4096, many: 2048 } as const;

/** From pixels of what is shown to the ground, where it still is what the picture is now; else null. */
export const groundMap = ({ ties, shown }: PictureEntry, underlay: Underlay): Projective | null => {
  if (shown.is !== 'here') return null;
  const now = tiesOf(underlay);
  const [first, second] = now;
  const { bitmap, plan } = shown;
  if (plan === null) {
    if (now.length !== 2 || first === undefined || second === undefined) return null;
    const [x, y] = [underlay.width / bitmap.width, underlay.height / bitmap.height];
    return composed(similarityOf(first, second), [x, 0, 0, 0, y, 0, 0, 0, 1]);
  }
  const motion = carried(ties, now);
  if (motion === null) return null;
  const { corner, pixel } = plan;
  return composed(motion, [pixel, 0, corner.x, 0, -pixel, corner.y, 0, 0, 1]);
};

/** Whether what is shown of an underlay is what there is to be shown of it. */
const isDone = (
  entry: PictureEntry | undefined,
  underlay: Underlay,
  { pictures }: Pick<Site, 'pictures'>,
): boolean => {
  if (entry === undefined || entry.picture !== underlay.picture) return false;
  const { is } = entry.shown;
  if (is === 'here') return groundMap(entry, underlay) !== null;
  if (is === 'missing') return !(underlay.picture in pictures);
  return is === 'unreadable' && entry.ties.length === tiesOf(underlay).length;
};

/**
 * Keeps the pixels of what lies under the drawing at hand, as it comes, goes and is straightened; one
 * after the other, so that no two large pictures are decoded at once.
 */
export const createPictureBox = ({ site, shelf, worker }: Parts): PictureBox => {
  const shown = createCell<ReadonlyMap<UnderlayId, PictureEntry>>(new Map());
  const known = new Map<PictureId, Blob>();
  const present = (): Site => current(site.getState().history);
  const bytes = async (id: PictureId): Promise<Blob | null> => {
    const found = known.get(id);
    if (found !== undefined) return found;
    const inFile = present().pictures[id];
    const blob =
      inFile === undefined ? await shelf.read(id).catch(() => null) : await blobOf(inFile);
    if (blob !== null) known.set(id, blob);
    return blob;
  };
  const set = (id: UnderlayId, entry: PictureEntry): void =>
    shown.setState(new Map(shown.getState()).set(id, entry), true);
  const load = async (underlay: Underlay, longest: number): Promise<Shown> => {
    const picture = await bytes(underlay.picture);
    if (picture === null) return { is: 'missing' };
    const ties = tiesOf(underlay);
    const { width, height } = underlay;
    const answer = await worker.show(
      ties.length === 2
        ? { do: 'show', picture, longest }
        : { do: 'straighten', picture, longest, laid: { width, height, ties } },
    );
    if (!answer.ok) return { is: 'unreadable', why: answer.reason };
    return { is: 'here', ...answer.value };
  };
  const tried = (underlay: Underlay, longest: number): Promise<Shown> =>
    load(underlay, longest).catch((error: unknown) => ({ is: 'unreadable', why: told(error) }));
  const next = (): readonly [UnderlayId, Underlay] | undefined =>
    (Object.entries(present().underlays) as [UnderlayId, Underlay][]).find(
      ([id, underlay]) => !isDone(shown.getState().get(id), underlay, present()),
    );
  let busy = false;
  const work = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    for (let found = next(); found !== undefined; found = next()) {
      const [id, underlay] = found;
      const { picture } = underlay;
      const ties = tiesOf(underlay);
      set(id, { picture, ties, shown: { is: 'reading' } });
      const count = Object.keys(present().underlays).length;
      const loaded = await tried(underlay, count <= sharp ? sides.sharp : sides.many);
      if (id in present().underlays) set(id, { picture, ties, shown: loaded });
    }
    busy = false;
  };
  const look = (): void => {
    const { underlays } = present();
    const gone = [...shown.getState().keys()].filter((id) => !(id in underlays));
    if (gone.length > 0) {
      const rest = new Map(shown.getState());
      for (const id of gone) rest.delete(id);
      shown.setState(rest, true);
    }
    void work();
  };
  site.subscribe(look);
  look();
  const put = async (id: PictureId, picture: Blob): Promise<string | null> => {
    known.set(id, picture);
    const rest = [...shown.getState()].filter(
      ([, { picture: other, shown: now }]) => other !== id || now.is === 'here',
    );
    // what waited for it is looked at again
    shown.setState(new Map(rest), true);
    void work();
    try {
      await shelf.write(id, picture);
      return null;
    } catch {
      return phrase`it is not kept on this device: there is no room, or it keeps nothing`;
    }
  };
  return { shown, bytes, put, worker };
};
