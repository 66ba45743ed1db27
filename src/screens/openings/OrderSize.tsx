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
import { MaybeLengthField } from '../fields/MaybeLengthField.tsx';

const above0 = (name: string, found: Inches, style: LengthStyle): string =>
  `${name}: expected more than 0, found ${sizeText(found, style)}`;

/** A wanted or already set opening turned round into leaves to order. */
export const OrderSize = ({ gate }: { readonly gate: GateLayout }) => {
  const { lengths, shop } = useSite();
  const edit = useEdit();
  const [want, setWant] = useState<Inches | null>(null);
  return (
    <details className="more">
      <summary>Order size</summary>
      <div className="pair">
        <MaybeLengthField
          label="Wanted or set opening"
          value={want}
          style={lengths}
          note="Inside face to inside face of the posts"
          onEnter={(value) => {
            if (value !== null && !(value > 0)) return above0('Wanted opening', value, lengths);
            setWant(value);
            return null;
          }}
        />
        <MaybeLengthField
          label="Shop makes leaves in steps of"
          value={shop.leafStep}
          style={lengths}
          note="For every gate of this site"
          onEnter={(step) => {
            if (step === null) return 'Step of the shop: expected a length above zero';
            if (!(step > 0)) return above0('Step of the shop', step, lengths);
            return edit('Set step of leaves', (was) => setShop(was, { leafStep: step }));
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
  { value: 'equal', label: 'Leaves alike' },
  { value: 'as apart as now', label: 'As far apart in width as now' },
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
        <ChoiceField label="Share it out" value={share} choices={shares} onChoose={setShare} />
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

const Solved = ({ gate, want, order: { leaves, opening } }: SolvedProps) => {
  const { lengths } = useSite();
  const make = useDo();
  const write = (length: Inches) => formatLength(length, exactStyle([length], lengths));
  const sizes = [...new Set(leaves.map(({ width }) => write(width)))];
  const one = leaves.length === 1;
  return (
    <>
      <p>
        {one ? 'One leaf of ' : sizes.length === 1 ? `${leaves.length} leaves of ` : 'Leaves of '}
        <strong>{sizes.join(' and ')}</strong>, rounded down to the step. With {one ? 'it' : 'them'}{' '}
        the opening to hold is <strong>{write(opening.target)}</strong>. Posts set at {write(want)}{' '}
        {setAtText(opening, want, lengths)}.
      </p>
      <button
        type="button"
        onClick={() => make('Take ordered leaves', (was) => orderLeaves(was, gate, leaves))}
      >
        Take these leaves
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
