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
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly spec: FenceSpec;
  readonly style: LengthStyle;
  /** The unit of a bare number in small sizes. */
  readonly small: 'mm' | 'inches';
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

type Of<Kind extends Infill['kind']> = Extract<Infill, { kind: Kind }>;

const kinds = [
  { value: 'chain link', label: phrase`Chain-link fabric` },
  { value: 'boards', label: phrase`Boards or pickets on rails` },
  { value: 'panels', label: phrase`Panels of one width` },
] as const;

/** What each kind begins with. */
const started = (kind: Infill['kind'], { fabricHeight }: FenceSpec): Infill => {
  if (kind === 'boards') return usualInfillOfBoards(fabricHeight);
  return kind === 'panels' ? usualInfillOfPanels() : { kind };
};

const railCounts = [1, 2, 3, 4, 5, 6].map((count) => ({
  value: String(count),
  label: count === 1 ? phrase`1 rail` : phrase`${count} rails`,
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
        label={phrase`What a board is`}
        value={infill.board}
        note={phrase`As it is ordered: cedar, dog-eared. May stay empty.`}
        onEnter={(board) => set(phrase`Name board`, { board: board.trim() })}
      />
      <div className="pair">
        <LengthField
          label={phrase`A board is wide`}
          value={infill.width}
          style={style}
          bare={small}
          onEnter={(width) => set(phrase`Change board`, { width })}
        />
        <LengthField
          label={phrase`Between two boards`}
          value={infill.gap}
          style={style}
          bare={small}
          onEnter={(gap) => set(phrase`Change gap`, { gap })}
        />
      </div>
      <div className="pair">
        <ChoiceField
          label={phrase`Rails`}
          value={String(infill.rails)}
          choices={railCounts}
          onChoose={(rails) => void set(phrase`Change rails`, { rails: Number(rails) })}
        />
        <TextField
          label={phrase`What a rail is`}
          value={infill.rail}
          onEnter={(rail) => set(phrase`Name rail`, { rail: rail.trim() })}
        />
      </div>
      <p className="note">{phrase`Where a build begins: ${boardFence.source.text}.`}</p>
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
        label={phrase`What a panel is`}
        value={infill.panel}
        note={phrase`As it is ordered. May stay empty.`}
        onEnter={(panel) => set(phrase`Name panel`, { panel: panel.trim() })}
      />
      <LengthField
        label={phrase`A panel is wide, face to face of posts`}
        value={infill.width}
        style={style}
        onEnter={(width) => set(phrase`Change panel`, { width })}
      />
      {widest !== null && widest < infill.width && (
        <p className="fault">
          {phrase`The longest bay is ${write(spec.maxBay)}: panels are cut to ${write(widest)}.`}
        </p>
      )}
      <p className="note">
        {phrase`The width of a panel with what its brackets take: ${panelFence.source.text}.`}
      </p>
      <ChoiceField
        label={phrase`Where a whole panel does not fit`}
        value={infill.last}
        choices={[
          { value: 'cut', label: phrase`Whole ones from the hook, the last cut` },
          { value: 'all equal', label: phrase`All cut to one width` },
        ]}
        onChoose={(last) => void set(phrase`Change panels`, { last })}
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
        label={phrase`Between the posts`}
        value={infill.kind}
        choices={kinds}
        onChoose={(kind) => {
          if (kind === infill.kind) return;
          void change(phrase`Change what is between posts`, { infill: started(kind, spec) });
        }}
      />
      {infill.kind === 'boards' && <BoardFields {...props} infill={infill} />}
      {infill.kind === 'panels' && <PanelFields {...props} infill={infill} />}
    </div>
  );
};
