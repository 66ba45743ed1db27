import { createContext, useContext } from 'react';
import type { Parts } from '../site/parts.ts';
import type { Sender } from '../editor/send.ts';
import type { Pad } from '../editor/view.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Layout } from '../engine/layout.ts';
import type { Site } from '../site/site.ts';
import type { TownRules } from '../site/townRules.ts';
import type { Books } from '../store/books.ts';
import type { Cell } from '../store/cell.ts';
import type { CopyShelf } from '../store/copyShelf.ts';
import { current } from '../store/history.ts';
import type { Shelves } from '../store/loadKept.ts';
import type { Keeper } from '../store/persist.ts';
import type { Session, SessionStore } from '../store/session.ts';
import type { SiteStore } from '../store/siteStore.ts';
import type { KeepPromise } from './jobs/askToKeep.ts';
import type { Offer } from './merge/offer.ts';
import type { PictureBox } from './pictures/pictureBox.ts';
import { useStored } from './useStored.ts';

/** What all screens work on: the document, the session, the layout that follows, and the tools. */
export interface Bench extends Books {
  readonly site: SiteStore;
  readonly session: SessionStore;
  readonly layOut: (site: Site) => Layout;
  readonly sender: Sender;
  /** The size of the pad when it was last on the screen; null before it was. */
  readonly pad: Cell<Pad | null>;
  /** Whether the view is one that was kept, so that the pad does not start with showing all. */
  readonly viewKept: boolean;
  /** Where on the ground the pointer or the crosshair was last; null before it was anywhere. */
  readonly pointer: Cell<SitePoint | null>;
  /** A file of another program that waits to be brought in. */
  readonly bring: Cell<File | null>;
  /** The pictures under the drawing. */
  readonly pictures: PictureBox;
  /** A PDF of which a page is to be chosen. */
  readonly page: Cell<File | null>;
  /** Documents that this device saved and opened. */
  readonly copies: CopyShelf;
  /** A copy of the job on the pad that came in a file and waits to be merged or not. */
  readonly copy: Cell<Offer | null>;
  /** Keeps what is new in the books; whether the device has all of it then. */
  readonly keepBooks: () => Promise<boolean>;
  /** The jobs that are kept on the device, and who keeps the one on the pad. */
  readonly jobs: Shelves & { readonly keeper: Keeper; readonly promise: Cell<KeepPromise> };
}

export const BenchContext = createContext<Bench | null>(null);

/** The bench of the program. Throws outside of it. */
export const useBench = (): Bench => {
  const bench = useContext(BenchContext);
  if (bench === null) throw new Error('expected a bench around every screen');
  return bench;
};

/** Where screens read the document and its layout: from the bench, unless something calmer is put in its place. */
export const SeenContext = createContext<Pick<Bench, 'site' | 'layOut'> | null>(null);

const useSeen = (): Pick<Bench, 'site' | 'layOut'> => {
  const [bench, seen] = [useBench(), useContext(SeenContext)];
  return seen ?? bench;
};

/** A part of the document as it is shown, which passes by what else is in it: see `useStored`. */
export const useSitePart = <Part>(pick: (site: Site) => Part): Part =>
  useStored(useSeen().site, ({ history }) => pick(current(history)));

/** The document as it is shown: the draft of a running gesture, else the present. */
export const useSite = (): Site => useSitePart((site) => site);

/** The layout of the document as it is shown. */
export const useLayout = (): Layout => {
  const { layOut } = useSeen();
  return layOut(useSite());
};

/** A part of the session. */
export const useSession = <Part>(pick: (session: Session) => Part): Part =>
  useStored(useBench().session, pick);

/** What the hardware book has. */
export const useBook = (): Parts => useStored(useBench().book, ({ entries }) => entries);

/** What the book of town rules has. */
export const useTownBook = (): TownRules =>
  useStored(useBench().townBook, ({ entries }) => entries);
