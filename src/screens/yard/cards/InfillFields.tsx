import { widestPanel } from '../../../engine/posts/longestBay.ts';
import { usualInfillOfBoards } from '../../../engine/usualBoards.ts';
import { usualInfillOfPanels } from '../../../engine/usualPanels.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import type { Infill } from '../../../site/infill.ts';
import { boardFence } from '../../../trade/boardFence.ts';
import { panelFence } from '../../../trade/panelFence.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';

interface Props {
  readonly spec: FenceSpec;
  readonly style: LengthStyle;
  /** The unit of a bare number in small sizes. */
  readonly small: 'mm' | 'inches';
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

type Of<Kind extends Infill['kind']> = Extract<Infill, { kind: Kind }>;

const kinds = [
  { value: 'chain link', label: 'Chain-link fabric' },
  { value: 'boards', label: 'Boards or pickets on rails' },
  { value: 'panels', label: 'Panels of one width' },
] as const;

/** What each kind begins with. */
const started = (kind: Infill['kind'], { fabricHeight }: FenceSpec): Infill => {
  if (kind === 'boards') return usualInfillOfBoards(fabricHeight);
  return kind === 'panels' ? usualInfillOfPanels() : { kind };
};

const railCounts = [1, 2, 3, 4, 5, 6].map((count) => ({
  value: String(count),
  label: count === 1 ? '1 rail' : `${count} rails`,
}));

const BoardFields = ({
  infill,
  style,
  small,
  change,
}: Omit<Props, 'spec'> & { readonly infill: Of<'boards'> }) => {
  const set = (label: string, fields: Partial<Of<'boards'>>) =>
    change(label, { infill: { ...infill, ...fields } });
  return (
    <>
      <TextField
        label="What a board is"
        value={infill.board}
        note="As it is ordered: cedar, dog-eared. May stay empty."
        onEnter={(board) => set('Name board', { board: board.trim() })}
      />
      <div className="pair">
        <LengthField
          label="A board is wide"
          value={infill.width}
          style={style}
          bare={small}
          onEnter={(width) => set('Change board', { width })}
        />
        <LengthField
          label="Between two boards"
          value={infill.gap}
          style={style}
          bare={small}
          onEnter={(gap) => set('Change gap', { gap })}
        />
      </div>
      <div className="pair">
        <ChoiceField
          label="Rails"
          value={String(infill.rails)}
          choices={railCounts}
          onChoose={(rails) => void set('Change rails', { rails: Number(rails) })}
        />
        <TextField
          label="What a rail is"
          value={infill.rail}
          onEnter={(rail) => set('Name rail', { rail: rail.trim() })}
        />
      </div>
      <p className="note">Where a build begins: {boardFence.source.text}.</p>
    </>
  );
};

const PanelFields = ({
  spec,
  infill,
  style,
  change,
}: Props & { readonly infill: Of<'panels'> }) => {
  const set = (label: string, fields: Partial<Of<'panels'>>) =>
    change(label, { infill: { ...infill, ...fields } });
  const widest = widestPanel(spec);
  const write = (length: FenceSpec['maxBay']) => formatLength(length, fineStyle(style));
  return (
    <>
      <TextField
        label="What a panel is"
        value={infill.panel}
        note="As it is ordered. May stay empty."
        onEnter={(panel) => set('Name panel', { panel: panel.trim() })}
      />
      <LengthField
        label="A panel is wide, face to face of posts"
        value={infill.width}
        style={style}
        onEnter={(width) => set('Change panel', { width })}
      />
      {widest !== null && widest < infill.width && (
        <p className="fault">
          The longest bay is {write(spec.maxBay)}: panels are cut to {write(widest)}.
        </p>
      )}
      <p className="note">
        The width of a panel with what its brackets take: {panelFence.source.text}.
      </p>
      <ChoiceField
        label="Where a whole panel does not fit"
        value={infill.last}
        choices={[
          { value: 'cut', label: 'Whole ones from the hook, the last cut' },
          { value: 'all equal', label: 'All cut to one width' },
        ]}
        onChoose={(last) => void set('Change panels', { last })}
      />
    </>
  );
};

/** What a build has between its posts, and what is asked of each kind. */
export const InfillFields = (props: Props) => {
  const { spec, change } = props;
  const { infill } = spec;
  return (
    <div className="stack">
      <ChoiceField
        label="Between the posts"
        value={infill.kind}
        choices={kinds}
        onChoose={(kind) => {
          if (kind === infill.kind) return;
          void change('Change what is between posts', { infill: started(kind, spec) });
        }}
      />
      {infill.kind === 'boards' && <BoardFields {...props} infill={infill} />}
      {infill.kind === 'panels' && <PanelFields {...props} infill={infill} />}
    </div>
  );
};
