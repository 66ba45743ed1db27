import { isWoven } from '../../../site/isWoven.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import { selvages } from '../../../site/selvage.ts';
import { usualSelvage } from '../../../trade/selvage.ts';
import { gradeOf } from '../../../trade/gradeOf.ts';
import { pipeGrades } from '../../../trade/steel.ts';
import { usualFabric, wires, wireSource } from '../../../trade/wires.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { quotedText } from '../../../units/quotedText.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { MaybeLengthField } from '../../fields/MaybeLengthField.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly spec: FenceSpec;
  readonly style: LengthStyle;
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

const untold = 'untold';
const other = 'other';

const edges: Readonly<Record<(typeof selvages)[number], string>> = {
  'knuckled both edges': phrase`knuckled both edges`,
  'twisted top edge': phrase`twisted top edge`,
  'twisted both edges': phrase`twisted both edges`,
};

const steels = { regular: phrase`regular`, 'high strength': phrase`high strength` } as const;

/** A wire by its gauge, as it is bought. */
const WireField = ({ spec, style, change }: Props) => {
  const known = wires.find(({ diameter }) => diameter === spec.wire);
  const odd = known === undefined ? spec.wire : null;
  return (
    <>
      <ChoiceField
        label={phrase`Wire of the fabric`}
        value={spec.wire === null ? untold : (known?.gauge ?? other)}
        choices={[
          { value: untold, label: phrase`Nobody has said` },
          ...wires.map(({ gauge, diameter }) => ({
            value: gauge,
            label: phrase`${gauge} ga, ${pipeSize(diameter, style)}`,
          })),
          ...(odd === null ? [] : [{ value: other, label: pipeSize(odd, style) }]),
        ]}
        onChoose={(gauge) => {
          const wire = wires.find((one) => one.gauge === gauge)?.diameter ?? null;
          if (gauge !== other) void change(phrase`Change wire`, { wire });
        }}
      />
      <p className="note">{wireSource.text}.</p>
    </>
  );
};

/** How the edges of the fabric are made, as it is ordered. */
const SelvageField = ({ spec, change }: Props) => (
  <>
    <ChoiceField
      label={phrase`Edges of the fabric`}
      value={spec.selvage ?? untold}
      choices={[
        { value: untold, label: phrase`Nobody has said` },
        ...selvages.map((value) => ({ value, label: edges[value] })),
      ]}
      onChoose={(chosen) =>
        void change(phrase`Change edges`, { selvage: chosen === untold ? null : chosen })
      }
    />
    <p className="note">{usualSelvage.text}.</p>
  </>
);

const SolidField = ({ spec, change }: Props) => (
  <TextField
    label={
      spec.infill.kind === 'panels'
        ? phrase`Panels are solid, percent`
        : phrase`Slats or screen leave solid, percent`
    }
    keys="decimal"
    value={spec.solid === null ? '' : String(Number((100 * spec.solid).toFixed(1)))}
    note={
      spec.infill.kind === 'panels'
        ? phrase`Empty counts as all solid.`
        : phrase`Empty for fabric alone.`
    }
    onEnter={(text) => {
      if (text.trim() === '') return change(phrase`Change slats`, { solid: null });
      const percent = /^\d{1,3}(?:\.\d)? ?%?$/.test(text.trim()) ? parseFloat(text) : NaN;
      if (percent >= 0 && percent <= 100)
        return change(phrase`Change slats`, { solid: percent / 100 });
      return phrase`Slats or screen ${quotedText(text)}: expected 0 to 100 percent, or nothing`;
    }}
  />
);

/** What fabric and pipe are made of, by which wind is reckoned, and how deep holes are at least. */
export const FabricFields = (props: Props) => {
  const { spec, style, change } = props;
  const woven = isWoven(spec);
  return (
    <div className="stack">
      {woven && (
        <MaybeLengthField
          label={phrase`Mesh, clear between wires`}
          value={spec.mesh}
          style={style}
          note={phrase`Empty where nobody has said: counts as ${formatLength(usualFabric.mesh, style)} of ${pipeSize(usualFabric.wire, style)} wire.`}
          onEnter={(mesh) => change(phrase`Change mesh`, { mesh })}
        />
      )}
      {woven && <WireField {...props} />}
      {woven && <SelvageField {...props} />}
      {spec.infill.kind !== 'boards' && <SolidField {...props} />}
      <ChoiceField
        label={phrase`Steel of the pipe`}
        value={spec.grade ?? untold}
        choices={[
          {
            value: untold,
            label: phrase`As the table has ${spec.linePost.label}: ${steels[gradeOf(spec.linePost).label]}`,
          },
          ...pipeGrades.map(({ label, yields }) => ({
            value: label,
            label: phrase`${steels[label]}, ${yields.toLocaleString('en-US')} psi`,
          })),
        ]}
        onChoose={(grade) =>
          void change(phrase`Change steel`, { grade: grade === untold ? null : grade })
        }
      />
      <p className="note">{pipeGrades.map(({ source }) => source.text).join('. ')}.</p>
      <LengthField
        label={phrase`Holes at least so deep`}
        value={spec.leastDepth}
        style={style}
        onEnter={(leastDepth) => change(phrase`Change holes`, { leastDepth })}
      />
    </div>
  );
};
