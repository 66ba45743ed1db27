import { cornerAngles } from '../../../trade/cornerAngles.ts';
import { curveSpacingSource } from '../../../trade/curveSpacing.ts';
import { defaultGapUnder } from '../../../trade/gapUnder.ts';
import { pullGrades, pullIntervals } from '../../../trade/pullPosts.ts';
import { isWoven } from '../../../site/isWoven.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import { theInfill } from '../../../site/infillWord.ts';
import { formatAngle } from '../../../units/formatAngle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { parseAngle } from '../../../units/parseAngle.ts';
import { parseLength } from '../../../units/parseLength.ts';
import { quotedText } from '../../../units/quotedText.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { Published } from './Published.tsx';
import { gradeText, readGrade } from './readGrade.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly spec: FenceSpec;
  readonly style: LengthStyle;
  /** The unit of a bare number in small sizes. */
  readonly small: 'mm' | 'inches';
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

const CornerField = ({ spec, change }: Props) => (
  <>
    <TextField
      label={phrase`Corner from a turn of`}
      keys="decimal"
      value={formatAngle(spec.cornerAngle)}
      onEnter={(text) => {
        const angle = parseAngle(text);
        if (!angle.ok) return angle.reason;
        if (angle.value < 0 || angle.value > Math.PI) {
          return phrase`${quotedText(text)} is no turn: expected degrees from 0 to 180`;
        }
        return change(phrase`Change corner angle`, { cornerAngle: angle.value });
      }}
    />
    <Published
      of={phrase`corner angle`}
      figures={cornerAngles.map(({ angle, source }) => ({
        text: formatAngle(angle),
        source,
        used: spec.cornerAngle === angle,
        onTake: () => void change(phrase`Change corner angle`, { cornerAngle: angle }),
      }))}
      besides={phrase`ASTM F567-07 says only “abrupt”.`}
    />
  </>
);

const PullIntervalField = ({ spec, style, change }: Props) => {
  const set = (pullInterval: FenceSpec['pullInterval']) =>
    change(phrase`Change pull interval`, { pullInterval });
  const enter = (text: string): string | null => {
    if (text.trim() === '') return set(null);
    const length = parseLength(text, style.system);
    if (!length.ok) return phrase`Pull posts every: ${length.reason}`;
    if (length.value > 0) return set(length.value);
    return phrase`Pull posts every ${quotedText(text)}: expected more than 0, or nothing for none`;
  };
  return (
    <>
      <TextField
        label={phrase`Pull posts every`}
        value={spec.pullInterval === null ? '' : formatLength(spec.pullInterval, style)}
        note={phrase`Empty for none.`}
        onEnter={enter}
      />
      <Published
        of={phrase`pull posts`}
        figures={pullIntervals.map(({ length, source }) => ({
          text: formatLength(length, style),
          source,
          used: spec.pullInterval === length,
          onTake: () => void set(length),
        }))}
      />
    </>
  );
};

const PullGradeField = ({ spec, change }: Props) => {
  const set = (pullGrade: number | null) => change(phrase`Change pull grade`, { pullGrade });
  return (
    <>
      <TextField
        label={phrase`Pull post where the grade changes by over`}
        keys="decimal"
        value={spec.pullGrade === null ? '' : gradeText(spec.pullGrade)}
        note={phrase`Percent; empty for none.`}
        onEnter={(text) => {
          const grade = readGrade(text);
          return grade.ok ? set(grade.value) : grade.reason;
        }}
      />
      <Published
        of={phrase`change of grade`}
        figures={pullGrades.map(({ ratio, source }) => ({
          text: gradeText(ratio),
          source,
          used: spec.pullGrade === ratio,
          onTake: () => void set(ratio),
        }))}
        besides={phrase`ASTM F567-07 4.2 says only “abrupt”.`}
      />
    </>
  );
};

const GapUnderField = ({ spec, style, small, change }: Props) => (
  <>
    <LengthField
      label={phrase`Gap under ${theInfill(spec.infill)}, at most`}
      value={spec.gapUnder}
      style={style}
      bare={small}
      onEnter={(gapUnder) => change(phrase`Change gap under the fabric`, { gapUnder })}
    />
    <Published
      of={phrase`gap under the fabric`}
      figures={[
        {
          text: formatLength(defaultGapUnder.length, style),
          source: defaultGapUnder.source,
          used: spec.gapUnder === defaultGapUnder.length,
          onTake: () =>
            void change(phrase`Change gap under the fabric`, { gapUnder: defaultGapUnder.length }),
        },
      ]}
    />
  </>
);

const CurvesField = ({ spec, change }: Props) => (
  <>
    <ChoiceField
      label={phrase`Bays on curves`}
      value={spec.onCurves}
      choices={[
        { value: 'by radius', label: phrase`Shorter, by the radius` },
        { value: 'as straight', label: phrase`As on straight fence` },
      ]}
      onChoose={(onCurves) => void change(phrase`Change bays on curves`, { onCurves })}
    />
    <p className="note">{curveSpacingSource.text}.</p>
  </>
);

const FoundationField = ({ spec, style, change }: Props) => {
  const set = (foundationToe: FenceSpec['foundationToe']) =>
    change(phrase`Change foundation`, { foundationToe });
  return (
    <TextField
      label={phrase`Foundations reach out from walls by`}
      value={spec.foundationToe === null ? '' : formatLength(spec.foundationToe, style)}
      note={phrase`Under ground, at walls where the fence ends; empty where nobody knows.`}
      onEnter={(text) => {
        if (text.trim() === '') return set(null);
        const length = parseLength(text, style.system);
        if (!length.ok) return phrase`Foundations: ${length.reason}`;
        if (length.value >= 0) return set(length.value);
        return phrase`Foundations ${quotedText(text)}: expected 0 or more, or nothing`;
      }}
    />
  );
};

/** The rules by which posts are placed and ground is judged, each with what is published of it. */
export const RuleFields = (props: Props) => (
  <div className="stack">
    <CornerField {...props} />
    {isWoven(props.spec) && <PullIntervalField {...props} />}
    {isWoven(props.spec) && <PullGradeField {...props} />}
    <CurvesField {...props} />
    <GapUnderField {...props} />
    <FoundationField {...props} />
  </div>
);
