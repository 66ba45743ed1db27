import type { AsSet } from '../../../site/asSet.ts';
import { TextField } from '../../fields/TextField.tsx';
import type { Recorder } from './useAsSet.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly asSet: AsSet;
  readonly onRecord: Recorder;
}

/** Who set the posts, on which day, and what else there is to say. */
export const Signed = ({ asSet, onRecord }: Props) => {
  const entered = (key: 'by' | 'on' | 'remark') => (text: string) =>
    onRecord(phrase`Sign set record`, { ...asSet, [key]: text.trim() });
  return (
    <>
      <div className="pair">
        <TextField label={phrase`Set by (initials)`} value={asSet.by} onEnter={entered('by')} />
        <TextField label={phrase`Set on`} value={asSet.on} onEnter={entered('on')} />
      </div>
      <TextField
        label={phrase`Remark`}
        value={asSet.remark}
        lines={2}
        onEnter={entered('remark')}
      />
    </>
  );
};
