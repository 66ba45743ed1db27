import { useEffect, useState } from 'react';
import { painted } from '../../canvas/painted.ts';
import { useBench, useSession } from '../bench.ts';
import { laterScreens } from '../laterScreens.ts';

const takeAway = async (): Promise<void> => {
  await painted();
  document.getElementById('first')?.remove();
  performance.mark('program shown');
  // so that the other screens are there when they are looked at; what cannot be had is told then
  for (const { fetch } of Object.values(laterScreens)) await fetch().catch(() => undefined);
};

/** Takes the first drawing away once the pad has one of its own, or there is none on the screen. */
export const FirstAway = () => {
  const { pad } = useBench();
  const screen = useSession((state) => state.screen);
  const [before] = useState(() => pad.getState());
  useEffect(() => {
    if (document.getElementById('first') === null) return;
    const here = screen === 'yard' && document.querySelector('.pad') !== null;
    if (!here || pad.getState() !== before) return void takeAway();
    const stop = pad.subscribe(() => {
      stop();
      void takeAway();
    });
    return stop;
  }, [pad, screen, before]);
  return null;
};
