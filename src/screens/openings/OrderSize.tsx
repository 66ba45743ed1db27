import { useState } from 'react';
import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import { setAtText } from '../../drawing/orders/setAtText.ts';
import { orderOf, type GateOrder, type LeafShare } from '../../engine/gate/orderOf.ts';
import { leavesOf } from '../../engine/gate/termsOf.ts';
import type { GateLayout } from '../../engine/layout.ts';
import { orderLeaves } from '../../site/edits/orderLeaves.ts';
import { setShop } from '../../site/edits/setShop.ts';
import type { GateId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { sizeText } from '../fields/sizeText.ts';
import { useDo, useEdit } from '../yard/cards/useEdit.ts';
import { spot, withElements } from '../withElements.tsx';
import { MaybeLengthField } from '../fields/MaybeLengthField.tsx';
import { phrase } from '../../phrases/phrase.ts';

const above0 = (name: string, found: Inches, style: LengthStyle): string =>
  phrase`${name}: expected more than 0, found ${sizeText(found, style)}`;

/** A wanted or already set opening turned round into leaves to order. */
export const OrderSize = ({ gate }: { readonly gate: GateLayout }) => {
  const { lengths, shop } = useSite();
  const edit = useEdit();
  const [want, setWant] = useState<Inches | null>(null);
  return (
    <details className="more">
      <summary>{phrase`Order size`}</summary>
      <div className="pair">
        <MaybeLengthField
          label={phrase`Wanted or set opening`}
          value={want}
          style={lengths}
          note={phrase`Inside face to inside face of the posts`}
          onEnter={(value) => {
            if (value !== null && !(value > 0))
              return above0(phrase`Wanted opening`, value, lengths);
            setWant(value);
            return null;
          }}
        />
        <MaybeLengthField
          label={phrase`Shop makes leaves in steps of`}
          value={shop.leafStep}
          style={lengths}
          note={phrase`For every gate of this site`}
          onEnter={(step) => {
            if (step === null) return phrase`Step of the shop: expected a length above zero`;
            if (!(step > 0)) return above0(phrase`Step of the shop`, step, lengths);
            return edit(phrase`Set step of leaves`, (was) => setShop(was, { leafStep: step }));
          }}
        />
      </div>
      {want !== null && <Ordered gate={gate} want={want} />}
    </details>
  );
};

interface OrderedProps {
  readonly gate: GateLayout;
  readonly want: Inches;
}

const shares = [
  { value: 'equal', label: phrase`Leaves alike` },
  { value: 'as apart as now', label: phrase`As far apart in width as now` },
] as const;

const Ordered = ({ gate, want }: OrderedProps) => {
  const site = useSite();
  const [share, setShare] = useState<LeafShare>('equal');
  const drawn = site.gates[gate.id];
  const now = drawn === undefined ? [] : leavesOf(drawn).map(leafWidth);
  const unequal = now.length === 2 && now[0] !== now[1];
  const solved = attempted(() => orderOf(site, gate.id, want, unequal ? share : 'equal'));
  return (
    <>
      {unequal && (
        <ChoiceField
          label={phrase`Share it out`}
          value={share}
          choices={shares}
          onChoose={setShare}
        />
      )}
      {typeof solved === 'string' ? (
        <p className="fault">{solved}</p>
      ) : (
        <Solved gate={gate.id} want={want} order={solved} />
      )}
    </>
  );
};

interface SolvedProps {
  readonly gate: GateId;
  readonly want: Inches;
  readonly order: GateOrder;
}

/** What comes of a wanted opening, with spots for the sizes of the leaves and for the opening to hold. */
const solvedText = (
  { count, alike }: { readonly count: number; readonly alike: boolean },
  setAt: string,
): string => {
  const [sizes, opening] = [spot(0), spot(1)];
  if (count === 1)
    return phrase`One leaf of ${sizes}, rounded down to the step. With it the opening to hold is ${opening}. ${setAt}`;
  return alike
    ? phrase`${count} leaves of ${sizes}, rounded down to the step. With them the opening to hold is ${opening}. ${setAt}`
    : phrase`Leaves of ${sizes}, rounded down to the step. With them the opening to hold is ${opening}. ${setAt}`;
};

const Solved = ({ gate, want, order: { leaves, opening } }: SolvedProps) => {
  const { lengths } = useSite();
  const make = useDo();
  const write = (length: Inches) => formatLength(length, exactStyle([length], lengths));
  const [first = '', second] = new Set(leaves.map(({ width }) => write(width)));
  const said = solvedText(
    { count: leaves.length, alike: second === undefined },
    phrase`Posts set at ${write(want)} ${setAtText(opening, want, lengths)}.`,
  );
  return (
    <>
      <p>
        {withElements(said, [
          <strong key="sizes">
            {second === undefined ? first : phrase`${first} and ${second}`}
          </strong>,
          <strong key="opening">{write(opening.target)}</strong>,
        ])}
      </p>
      <button
        type="button"
        onClick={() => make(phrase`Take ordered leaves`, (was) => orderLeaves(was, gate, leaves))}
      >
        {phrase`Take these leaves`}
      </button>
    </>
  );
};

/** What it gives, or the one line that says why it cannot. */
const attempted = (solve: () => GateOrder): GateOrder | string => {
  try {
    return solve();
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
};
