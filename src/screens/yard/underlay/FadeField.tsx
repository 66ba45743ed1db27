import { useId } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import { changeUnderlay } from '../../../site/edits/changeUnderlay.ts';
import type { UnderlayId } from '../../../site/ids.ts';
import { useBench } from '../../bench.ts';

interface Props {
  readonly id: UnderlayId;
  readonly shows: number;
}

/** How much of a picture shows. While it slides the pad shows it; one step of undo when it is let go. */
export const FadeField = ({ id, shows }: Props) => {
  const { site } = useBench();
  const field = useId();
  const percent = Math.round(shows * 100);
  const slide = (text: string) => {
    const { history, preview } = site.getState();
    preview(changeUnderlay(history.present.site, id, { shows: Number(text) / 100 }));
  };
  const keep = () => {
    const { history, commit } = site.getState();
    if (history.draft !== null) commit(history.draft, phrase`Fade picture`);
  };
  return (
    <div className="field">
      <label htmlFor={field}>{phrase`Shows: ${percent} %`}</label>
      <input
        id={field}
        type="range"
        min={0}
        max={100}
        step={5}
        value={percent}
        onChange={(event) => slide(event.target.value)}
        onPointerUp={keep}
        onKeyUp={keep}
        onBlur={keep}
      />
    </div>
  );
};
