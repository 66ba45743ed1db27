import { useEffect, useState } from 'react';

/** True once the lettering is loaded, so that what was painted before is painted again. */
export const useFontsReady = (): boolean => {
  const [ready, setReady] = useState(() => document.fonts.check('16px Barlow'));
  useEffect(() => {
    let here = true;
    const faces = ['400 16px Barlow', '600 16px Barlow'];
    void Promise.allSettled(faces.map((face) => document.fonts.load(face))).then(() => {
      if (here) setReady(true);
    });
    return () => {
      here = false;
    };
  }, []);
  return ready;
};
