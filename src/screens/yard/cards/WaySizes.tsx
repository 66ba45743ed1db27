import type { GateLayout } from '../../../engine/layout.ts';
import type { GateWay } from '../../../site/gateWay.ts';
import {
  counterbalanceFor,
  leastCounterbalance,
  overhangFor,
  overhangSource,
} from '../../../trade/slides.ts';
import { formatAngle } from '../../../units/formatAngle.ts';
import { parseAngle } from '../../../units/parseAngle.ts';
import { quotedText } from '../../../units/quotedText.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { useBook, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { SizeField } from '../../fields/SizeField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { sizeText } from '../../fields/sizeText.ts';
import { closedBy } from '../../plans/closedBy.ts';
import { Published } from './Published.tsx';
import { useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly way: GateWay;
  readonly laid: GateLayout;
  /** Whether the gate has one leaf. */
  readonly single: boolean;
}

const ends = [
  { value: 'start', label: phrase`Start of leg` },
  { value: 'end', label: phrase`End of leg` },
] as const;

/** The sizes of each way, and whether they may be nothing. */
const slideSizes = [
  { key: 'overlap', label: phrase`Overlap at the latch`, least: 'zero' },
  { key: 'counterbalance', label: phrase`Counterbalance`, least: 'zero' },
  { key: 'rollers', label: phrase`Roller posts, centre to centre`, least: 'above' },
  { key: 'behind', label: phrase`Roller posts behind the line`, least: 'zero' },
] as const;

/** What is published of the counterbalance of a leaf that closes so much, inches. */
const overhangs = (closes: Inches) => {
  const table = overhangFor(closes);
  return [
    { length: counterbalanceFor(closes), source: leastCounterbalance.source },
    ...(table === null ? [] : [{ length: table, source: overhangSource }]),
  ];
};

/** What the way in which a gate closes needs beside its leaves. */
export const WaySizes = ({ way, laid, single }: Props) => {
  const site = useSite();
  const book = useBook();
  const edit = useEdit();
  const change = (next: GateWay) =>
    edit(phrase`Change how the gate closes`, (was) => closedBy(was, laid, next, book));
  const size = (label: string, value: Inches, next: (to: Inches) => GateWay, least = 'above') => (
    <SizeField
      key={label}
      label={label}
      value={value}
      style={site.lengths}
      onEnter={(to) => {
        if (to > 0 || (to === 0 && least === 'zero')) return change(next(to));
        const found = sizeText(to, site.lengths);
        return least === 'zero'
          ? phrase`${label}: expected 0 or more, found ${found}`
          : phrase`${label}: expected more than 0, found ${found}`;
      }}
    />
  );
  if (way.kind === 'gap')
    return size(phrase`Clear width`, way.clear, (clear) => ({ ...way, clear }));
  if (way.kind === 'cantilever') {
    return (
      <>
        {slideSizes.map(({ key, label, least }) =>
          size(label, way[key], (to) => ({ ...way, [key]: to }), least),
        )}
        <Published
          of={phrase`counterbalance`}
          figures={overhangs(inches(laid.opening.target / (single ? 1 : 2))).map(
            ({ length, source }) => ({
              text: sizeText(length, site.lengths),
              source,
              used: way.counterbalance === length,
              onTake: () => void change({ ...way, counterbalance: length }),
            }),
          )}
        />
        {single && (
          <ChoiceField
            label={phrase`Rolls towards the`}
            value={way.stores}
            choices={ends}
            onChoose={(stores) => void change({ ...way, stores })}
          />
        )}
      </>
    );
  }
  return (
    <>
      {way.kind === 'centre stop' &&
        size(phrase`Centre stop, width`, way.stop, (stop) => ({ ...way, stop }))}
      <TextField
        label={phrase`Opens by`}
        keys="decimal"
        value={formatAngle(way.turns)}
        onEnter={(text) => {
          const angle = parseAngle(text);
          if (!angle.ok) return phrase`Opens by: ${angle.reason}`;
          if (angle.value > 0 && angle.value <= Math.PI) {
            return change({ ...way, turns: angle.value });
          }
          return phrase`Opens by: expected more than 0 up to 180°, found ${quotedText(text)}`;
        }}
      />
    </>
  );
};
