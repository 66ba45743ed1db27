import { useContext } from 'react';
import type { PictureWay } from '../../../editor/pictureWay.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { useBench } from '../../bench.ts';
import { PutDownContext } from '../putDown.ts';

const ways: readonly { readonly way: PictureWay; readonly label: string; readonly does: string }[] =
  [
    { way: 'distance', label: phrase`Two points, a known distance`, does: phrase`sizes it` },
    {
      way: 'two places',
      label: phrase`Two points onto two marks`,
      does: phrase`sizes, turns and moves it`,
    },
    {
      way: 'rectangle',
      label: phrase`Corners of a rectangle`,
      does: phrase`straightens it by two sides`,
    },
    {
      way: 'four places',
      label: phrase`Four points onto four marks`,
      does: phrase`straightens it`,
    },
  ];

/** The ways in which points of a picture say how it lies; each begins on the pad. */
export const WayKeys = () => {
  const { session, sender } = useBench();
  const putDown = useContext(PutDownContext);
  const begin = (way: PictureWay) => {
    session.setState({ tool: 'picture' });
    sender.send({ do: 'begin', way });
    putDown();
    document.querySelector<HTMLElement>('.pad')?.focus({ preventScroll: true });
  };
  return (
    <div className="ways-of-pictures">
      {ways.map(({ way, label, does }) => (
        <button key={way} type="button" onClick={() => begin(way)}>
          <span>{label}</span> <small>{does}</small>
        </button>
      ))}
    </div>
  );
};
