import './yard.css';
import './card.css';
import './typed.css';
import { useRef, useState } from 'react';
import type { SitePoint } from '../../geometry/point.ts';
import { Ground } from './Ground.tsx';
import { YardList } from './list/YardList.tsx';
import { Calmly } from '../Calmly.tsx';
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
  // another object each time that the list is asked for
  const [list, setList] = useState<object | null>(null);
  const [pulled, setPulled] = useState(false);
  const cardHead = useRef<HTMLHeadingElement>(null);
  const listKey = useRef<HTMLButtonElement>(null);
  const walk = useWalk();
  const askList = () => {
    setPulled(false);
    setList({});
  };
  const closeList = () => {
    setList(null);
    listKey.current?.focus();
  };
  const toCard = () => {
    setPulled(true);
    cardHead.current?.focus();
  };
  useYardKeys({ setCross, onType: (typed) => setSign({ sign: typed }), onList: askList });
  return (
    <div className="yard">
      <Toolbar walk={walk} />
      <Calmly>
        {list !== null && <YardList asked={list} onClose={closeList} onCard={toCard} />}
      </Calmly>
      <Ground
        cross={cross}
        walk={walk}
        onPointer={() => setCross(null)}
        onCard={() => setPulled(true)}
      />
      <Calmly>
        <SideSheet
          sign={sign}
          walk={walk}
          open={pulled}
          onOpen={setPulled}
          list={list === null ? 'closed' : 'open'}
          onList={askList}
          head={cardHead}
          listKey={listKey}
        />
      </Calmly>
      <TapeStrip />
    </div>
  );
};
