import { structureTable } from '../../drawing/tables/structureTable.ts';
import { phrase } from '../../phrases/phrase.ts';
import { figuresCaution } from '../../trade/cautions.ts';
import { exposures } from '../../trade/windTerms.ts';
import { soils, weakestSoil } from '../../trade/soils.ts';
import type { Conditions } from '../../site/conditions.ts';
import { setConditions } from '../../site/edits/setConditions.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { quotedText } from '../../units/quotedText.ts';
import { useLayout, useSession, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { TickField } from '../fields/TickField.tsx';
import { MaybeLengthField } from '../fields/MaybeLengthField.tsx';
import { useEdit } from './cards/useEdit.ts';

type Change = (label: string, fields: Partial<Conditions>) => string | null;

interface Props {
  readonly conditions: Conditions;
  readonly change: Change;
}

const untold = 'untold';

const GroundField = ({ conditions, change }: Props) => (
  <>
    <ChoiceField
      label={phrase`Ground`}
      value={conditions.soil ?? untold}
      choices={[
        { value: untold, label: phrase`Nobody has said` },
        ...soils.map(({ name, label }) => ({ value: name, label })),
      ]}
      onChoose={(soil) =>
        void change(phrase`Change ground`, { soil: soil === untold ? null : soil })
      }
    />
    <p className="note">
      {conditions.soil === null && <>{phrase`Counts as ${weakestSoil.label}.`} </>}
      {weakestSoil.source.text}.
    </p>
    <TickField
      label={phrase`Half an inch of movement at the ground does no harm`}
      ticked={conditions.isolated}
      onTick={(isolated) => void change(phrase`Change ground`, { isolated })}
    />
  </>
);

const speedOf = (text: string): number | null => {
  const bare = text.trim().replace(/ ?mph$/i, '');
  return /^\d{2,3}(?:\.\d{1,2})?$/.test(bare) ? Number(bare) : null;
};

const WindFields = ({ conditions, change }: Props) => {
  const { wind } = conditions;
  const enter = (text: string): string | null => {
    if (text.trim() === '') return change(phrase`Change wind`, { wind: null });
    const speed = speedOf(text);
    if (speed === null || speed < 20 || speed > 300)
      return phrase`Wind speed ${quotedText(text)}: expected 20 to 300 mph, or nothing`;
    return change(phrase`Change wind`, { wind: { speed, exposure: wind?.exposure ?? 'C' } });
  };
  return (
    <>
      <TextField
        label={phrase`Basic wind speed, mph`}
        keys="decimal"
        value={wind === null ? '' : String(wind.speed)}
        note={phrase`Of the place, as its building department tells it; empty where nobody has said.`}
        onEnter={enter}
      />
      {wind !== null && (
        <>
          <ChoiceField
            label={phrase`Open to the wind`}
            value={wind.exposure}
            choices={exposures.map(({ name, label }) => ({
              value: name,
              label: phrase`${name}: ${label}`,
            }))}
            onChoose={(exposure) =>
              void change(phrase`Change wind`, { wind: { ...wind, exposure } })
            }
          />
        </>
      )}
    </>
  );
};

const BaysField = ({ conditions: { wind, ice, bays }, change }: Props) =>
  wind === null && ice === null ? null : (
    <TickField
      label={phrase`No bay longer than line posts bear this wind`}
      ticked={bays === 'by wind'}
      onTick={(on) => void change(phrase`Change bays`, { bays: on ? 'by wind' : 'by build' })}
    />
  );

/** What the posts of each build were compared with, as the sheet prints it. */
const Compared = () => {
  const table = structureTable(useSite(), useLayout());
  if (table.rows.length === 0) return null;
  return (
    <details className="more">
      <summary>{table.title}</summary>
      <ul className="plain">
        {table.rows.map(([post, planned, against, by], n) => (
          // rows have no name of their own, and their order is that of the builds
          <li key={n}>
            {post !== '' && <b>{post}. </b>}
            {planned}. {against}. <span className="note">{by}.</span>
          </li>
        ))}
      </ul>
      <p className="note">{figuresCaution.text}</p>
    </details>
  );
};

const iceOf = ({ ice, wind }: Conditions, fields: Partial<NonNullable<Conditions['ice']>>) => ({
  thickness: ice?.thickness ?? 0,
  speed: ice?.speed ?? wind?.speed ?? 40,
  ...fields,
});

const IceFields = ({ conditions, change, style }: Props & { readonly style: LengthStyle }) => {
  const { ice } = conditions;
  const label = phrase`Change ice`;
  return (
    <>
      <MaybeLengthField
        label={phrase`Ice on wire and pipe, all round`}
        value={ice === null ? null : inches(ice.thickness)}
        style={style}
        note={phrase`As the building department tells it; empty for none.`}
        onEnter={(thickness) =>
          change(label, {
            ice: thickness === null || thickness === 0 ? null : iceOf(conditions, { thickness }),
          })
        }
      />
      {ice !== null && (
        <TextField
          label={phrase`Wind while the ice is there, mph`}
          keys="decimal"
          value={String(ice.speed)}
          onEnter={(text) => {
            const speed = speedOf(text);
            if (speed === null || speed < 20 || speed > 300)
              return phrase`Wind on ice ${quotedText(text)}: expected 20 to 300 mph`;
            return change(label, { ice: iceOf(conditions, { speed }) });
          }}
        />
      )}
    </>
  );
};

/** What the place does to the fence: ground, frost, wind and ice. Shown while nothing is selected. */
export const GroundAndWind = () => {
  const selection = useSession((state) => state.selection);
  const { conditions, lengths, lines } = useSite();
  const edit = useEdit();
  if (selection !== null || Object.keys(lines).length === 0) return null;
  const change: Change = (label, fields) => edit(label, (was) => setConditions(was, fields));
  return (
    <section aria-label={phrase`Ground and wind`}>
      <details className="more">
        <summary>{phrase`Ground and wind`}</summary>
        <div className="stack">
          <GroundField conditions={conditions} change={change} />
          <MaybeLengthField
            label={phrase`Frost goes down to`}
            value={conditions.frost}
            style={lengths}
            note={phrase`As the local authority tells it; empty where nobody has said.`}
            onEnter={(frost) => change(phrase`Change frost`, { frost })}
          />
          <WindFields conditions={conditions} change={change} />
          <IceFields conditions={conditions} change={change} style={lengths} />
          <BaysField conditions={conditions} change={change} />
          <Compared />
        </div>
      </details>
    </section>
  );
};
