import { baySpacings } from '../../../trade/baySpacings.ts';
import { courtPostTops, defaultPostTops } from '../../../trade/postTops.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { Published } from './Published.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly spec: FenceSpec;
  readonly style: LengthStyle;
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

/** What is published of the longest bay and of the tops of posts. */
export const BuildFigures = ({ spec, style, change }: Props) => (
  <div className="stack">
    <Published
      of={phrase`longest bay`}
      figures={baySpacings.map(({ length, source }) => ({
        text: formatLength(length, style),
        source,
        used: spec.maxBay === length,
        onTake: () => void change(phrase`Change longest bay`, { maxBay: length }),
      }))}
      besides={phrase`Screens, slats and signs call for less (ASTM F1043-18 1.1).`}
    />
    <Published
      of={phrase`post tops`}
      figures={[defaultPostTops, courtPostTops].map(({ terminal, line, source }) => ({
        text: phrase`${formatLength(terminal, style)} and ${formatLength(line, style)} over the fabric`,
        source,
        used: spec.terminalAbove === terminal && spec.lineAbove === line,
        onTake: () =>
          void change(phrase`Change post tops`, { terminalAbove: terminal, lineAbove: line }),
      }))}
    />
    <p className="note">
      {phrase`Gap at a wall: common practice, no published source. Local rules decide all of these.`}
    </p>
  </div>
);
