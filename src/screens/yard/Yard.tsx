import './yard.css';
import './card.css';
import './typed.css';
import { useState } from 'react';
import type { SitePoint } from '../../geometry/point.ts';
import { Ground } from './Ground.tsx';
import { SideSheet } from './SideSheet.tsx';
import { TapeStrip } from './tape/TapeStrip.tsx';
import { Toolbar } from './Toolbar.tsx';
import type { Sign } from './TypedEntry.tsx';
import { useYardKeys } from './useYardKeys.ts';
import { useWalk } from './walk/useWalk.ts';

/** The screen on which a yard is drawn. */
export const Yard = () => {
  const [cross, setCross] = useState<SitePoint | null>(null);
  const [sign, setSign] = useState<Sign | null>(null);
  const walk = useWalk();
  useYardKeys({ setCross, onType: (typed) => setSign({ sign: typed }) });
  return (
    <div className="yard">
      <Toolbar walk={walk} />
      <Ground cross={cross} walk={walk} onPointer={() => setCross(null)} />
      <SideSheet sign={sign} walk={walk} />
      <TapeStrip />
    </div>
  );
};
