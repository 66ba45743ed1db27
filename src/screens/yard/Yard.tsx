import './yard.css';
import { Ground } from './Ground.tsx';
import { SideSheet } from './SideSheet.tsx';
import { TapeStrip } from './tape/TapeStrip.tsx';
import { Toolbar } from './Toolbar.tsx';

/** The screen on which a yard is drawn. */
export const Yard = () => (
  <div className="yard">
    <Toolbar />
    <Ground />
    <SideSheet />
    <TapeStrip />
  </div>
);
