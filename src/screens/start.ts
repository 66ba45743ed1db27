import { createSend } from '../editor/send.ts';
import { toolbox } from '../editor/toolbox.ts';
import type { Site } from '../site/site.ts';
import type { Underlay } from '../site/underlay.ts';
import { createCell } from '../store/cell.ts';
import type { Pad } from '../editor/view.ts';
import type { SitePoint } from '../geometry/point.ts';
import { keepBook, loadBook, type BookKeeping } from '../store/bookPersist.ts';
import type { Books } from '../store/books.ts';
import { bookPlaces, deviceBookShelf } from '../store/bookShelf.ts';
import { createBookStore } from '../store/bookStore.ts';
import { hardwareKind } from '../store/hardwareKind.ts';
import { townRuleKind } from '../store/townRuleKind.ts';
import type { Kept } from '../store/loadKept.ts';
import type { JobShelf } from '../store/jobShelf.ts';
import type { KeptState } from '../store/keptState.ts';
import type { Keeping } from '../store/keeping.ts';
import { keep, mostHistory, type Keeper } from '../store/persist.ts';
import type { PictureShelf } from '../store/pictureShelf.ts';
import { deviceCopyShelf } from '../store/copyShelf.ts';
import { createSession } from '../store/session.ts';
import type { Bench } from './bench.ts';
import type { Opened } from './first/openFirst.ts';
import { screenOf } from './frame/tabs.ts';
import { askToKeep } from './jobs/askToKeep.ts';
import { otherWindows } from './jobs/jobsChannel.ts';
import type { Offer } from './merge/offer.ts';
import { createPictureWorker } from './pictures/askWorker.ts';
import { createPictureBox } from './pictures/pictureBox.ts';
import { genericBook } from './plans/genericBook.ts';
import { plansFrom } from './plans/startingPlans.ts';

/** A book kept on this device, kept on; and whatever of it could not be read. */
const startBook = async <Id extends string, Entry>(
  from: Pick<BookKeeping<Id, Entry>, 'kind' | 'shelf' | 'generic' | 'say'>,
) => {
  const { kind, say } = from;
  const { entries, trouble } = await loadBook(from);
  const book = createBookStore(kind, entries);
  const keeper = keepBook({ ...from, book });
  if (trouble !== null) say(trouble);
  // another tab may have written in it meanwhile
  window.addEventListener('focus', () => void keeper.refresh());
  document.addEventListener('visibilitychange', () => {
    void (document.visibilityState === 'hidden' ? keeper.now() : keeper.refresh());
  });
  return { book, keep: keeper.now };
};

/** The company's books, kept on this device. */
const startBooks = async (
  say: (line: string) => void,
): Promise<Books & Pick<Bench, 'keepBooks'>> => {
  const [hardware, towns] = await Promise.all([
    startBook({
      kind: hardwareKind,
      shelf: deviceBookShelf(bookPlaces.hardware),
      generic: genericBook,
      say,
    }),
    startBook({
      kind: townRuleKind,
      shelf: deviceBookShelf(bookPlaces.townRules),
      generic: {},
      say,
    }),
  ]);
  return {
    book: hardware.book,
    townBook: towns.book,
    keepBooks: async () => {
      const kept = await Promise.all([hardware.keep(), towns.keep()]);
      return kept.every((all) => all);
    },
  };
};

/** Bytes of pictures that a device keeps of yards that are not open. Ours. */
const mostPictures = 300_000_000;

/** Lets old pictures go that no job wants; a device that cannot tell which it has keeps them. */
const prunePictures = async (
  pictures: PictureShelf,
  shelf: JobShelf,
  site: Site,
): Promise<void> => {
  try {
    const under = Object.values<Underlay>(site.underlays).map(({ picture }) => picture);
    const wanted = (await shelf.heads()).flatMap((head) => head.wanted);
    await pictures.prune(mostPictures, new Set([...under, ...wanted]));
  } catch {
    // what cannot be told apart stays
  }
};

/** The keeper of the pad, which starts with what was kept. */
const startKeeper = (kept: Kept, parts: Pick<Keeping, 'shelf' | 'bytes' | 'site' | 'session'>) => {
  const jobs = [kept.job, kept.under].filter((job) => job !== null);
  const keeper: Keeper = keep({
    ...parts,
    known: jobs.map(({ ledger }) => ledger),
    now: Date.now,
    ...otherWindows(),
    most: mostHistory,
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void keeper.now();
    else keeper.catchUp();
  });
  const mark = ({ job, there, all }: KeptState) => {
    // what lies on the device for certain, for whoever has to know it
    document.documentElement.dataset['kept'] = `${job} ${there?.writes ?? 0} ${there?.at ?? 0}`;
    document.documentElement.dataset['keptAll'] = String(all);
  };
  keeper.state.subscribe(mark);
  mark(keeper.state.getState());
  return keeper;
};

/** The bench as the program opens, with the yard that is open already. From here on what is drawn is kept. */
export const start = async (opened: Opened): Promise<Bench> => {
  const { pictureShelf, shelf, bytes, kept, site, layOut, look } = opened;
  const session = createSession(plansFrom(genericBook));
  session.setState({ ...kept.session, ...(look !== null && { view: look.view }) });
  const books = await startBooks((say) => session.setState({ say }));
  session.setState({ plans: plansFrom(books.book.getState().entries) });
  if (kept.trouble !== null) session.setState({ say: kept.trouble });
  const screen = screenOf(window.location.hash);
  if (screen !== null) session.setState({ screen });
  const keeper = startKeeper(kept, { shelf, bytes, site, session });
  // a tour goes on where it was, also where no edit was made since
  session.subscribe((now, before) => {
    if (now.tour !== before.tour) void keeper.now();
  });
  void prunePictures(pictureShelf, shelf, site.getState().history.present.site);
  const sender = createSend({ site, session, layOut, tools: toolbox });
  return {
    site,
    ...books,
    session,
    layOut,
    sender,
    viewKept: kept.job !== null && kept.session.view !== undefined,
    // what is in the middle of the first drawing stays there
    pad: createCell<Pad | null>(look?.pad ?? null),
    pointer: createCell<SitePoint | null>(null),
    bring: createCell<File | null>(null),
    pictures: createPictureBox({ site, shelf: pictureShelf, worker: createPictureWorker() }),
    page: createCell<File | null>(null),
    copies: deviceCopyShelf(),
    copy: createCell<Offer | null>(null),
    jobs: { shelf, bytes, keeper, promise: askToKeep(site) },
  };
};
