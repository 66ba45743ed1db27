import { lazy, Suspense, useEffect } from 'react';
import { useBench, useSession, useSitePart } from './bench.ts';
import { BringOver } from './bring/BringOver.tsx';
import { PageOver } from './yard/underlay/PageOver.tsx';
import { Board } from './frame/Board.tsx';
import { DropFile } from './frame/DropFile.tsx';
import { KeptLine } from './frame/KeptLine.tsx';
import { Mishap } from './frame/Mishap.tsx';
import { Say } from './frame/Say.tsx';
import { screenOf, tabs } from './frame/tabs.ts';
import { laterScreens } from './laterScreens.ts';
import { MergeOver } from './merge/MergeOver.tsx';
import { TourStrip } from './help/tour/TourStrip.tsx';
import { Yard } from './yard/Yard.tsx';

const screens = {
  yard: Yard,
  openings: laterScreens.openings.Part,
  load: laterScreens.load.Part,
  sheet: laterScreens.sheet.Part,
} as const;

/** Of no need to the first screen: it comes after, and where it cannot be had there is none. */
const NewerVersion = lazy(() =>
  import('./offline/NewerVersion.tsx').then(
    (part) => ({ default: part.NewerVersion }),
    () => ({ default: () => null }),
  ),
);

/** The clipboard with its four screens. */
export const App = () => {
  const { session } = useBench();
  const screen = useSession((state) => state.screen);
  const theme = useSession((state) => state.theme);
  useEffect(() => {
    const follow = () => {
      const named = screenOf(window.location.hash);
      if (named !== null) session.setState({ screen: named });
    };
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, [session]);
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  const name = useSitePart(({ job }) => job.name);
  useEffect(() => {
    document.title = name === '' ? 'Lathline' : `${name} · Lathline`;
  }, [name]);
  const Screen = screens[screen];
  return (
    <div className="frame">
      <Board />
      <div>
        <KeptLine />
        <Suspense>
          <NewerVersion />
        </Suspense>
        <TourStrip />
      </div>
      <main className="sheet" data-screen={screen}>
        <h1 className="unseen">{tabs.find((tab) => tab.screen === screen)?.label}</h1>
        <Mishap key={screen}>
          <Screen />
        </Mishap>
      </main>
      <Say />
      <DropFile />
      <BringOver />
      <MergeOver />
      <PageOver />
    </div>
  );
};
