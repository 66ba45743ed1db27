import { useEffect, useState } from 'react';

/** True while a key is held down, wherever the focus is. */
export const useHeldKey = (key: string): boolean => {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    const down = (event: KeyboardEvent) => event.key === key && setHeld(true);
    const up = (event: KeyboardEvent) => event.key === key && setHeld(false);
    const lost = () => setHeld(false);
    window.addEventListener('keydown', down);
    window.addEventListener('keyup', up);
    window.addEventListener('blur', lost);
    return () => {
      window.removeEventListener('keydown', down);
      window.removeEventListener('keyup', up);
      window.removeEventListener('blur', lost);
    };
  }, [key]);
  return held;
};
