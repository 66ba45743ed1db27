import { useState } from 'react';
import { changeTexts } from '../../drawing/orders/changeTexts.ts';
import { restedCheck } from '../../engine/sign/restedCheck.ts';
import type { Rested } from '../../engine/sign/restsOn.ts';
import type { Standing } from '../../engine/sign/standing.ts';
import type { GateStanding } from '../../engine/sign/standingsOf.ts';
import { signGate } from '../../site/edits/signGate.ts';
import { useSite } from '../bench.ts';
import { spot, withElements } from '../withElements.tsx';
import { TextField } from '../fields/TextField.tsx';
import { useDo, useEdit } from '../yard/cards/useEdit.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** Who signs, and of which day: kept from gate to gate. */
export interface Signer {
  readonly by: string;
  readonly on: string;
}

interface Props {
  readonly gate: GateStanding;
  readonly signer: Signer;
  readonly onSigner: (signer: Signer) => void;
}

/** The sign-off of an opening: how it stands, what voided it, and the keys to sign or take back. */
export const SignOff = ({ gate, signer, onSigner }: Props) => {
  const { id, rested, standing, stops } = gate;
  const edit = useEdit();
  const make = useDo();
  const [fault, setFault] = useState<string | null>(null);
  const check = restedCheck(rested);
  const [stop] = stops;
  const sign = () => {
    const by = signer.by.trim();
    const signed = { by, on: signer.on.trim(), check, rested };
    setFault(
      by === ''
        ? phrase`Initials: expected those of who has checked this opening`
        : edit(phrase`Sign off opening`, (was) => signGate(was, id, signed)),
    );
  };
  const takeBack = () => make(phrase`Take sign-off back`, (was) => signGate(was, id, null));
  return (
    <div role="group" aria-label={phrase`Sign-off`} className={`sign ${standing.kind}`}>
      <h3>{phrase`Sign-off`}</h3>
      {standing.kind === 'void' && <Voided standing={standing} rested={rested} />}
      {standing.kind === 'signed' ? (
        <p>
          {withElements(
            phrase`Signed off by ${spot(0)}, ${standing.signOff.on}, check ${spot(1)}`,
            [
              <strong key="by">{standing.signOff.by}</strong>,
              <strong key="check">{standing.signOff.check}</strong>,
            ],
          )}
        </p>
      ) : (
        <>
          <SignerFields signer={signer} onSigner={onSigner} />
          {stop !== undefined && (
            <p className="fault">
              {phrase`Cannot be signed off while a stop stands: ${stop.message}`}
            </p>
          )}
          {fault !== null && (
            <p className="fault" role="alert">
              {fault}
            </p>
          )}
          <p className="note">{phrase`Check value of this opening: ${check}`}</p>
        </>
      )}
      <div className="choices">
        {standing.kind !== 'signed' && (
          <button type="button" className="chief" disabled={stop !== undefined} onClick={sign}>
            {standing.kind === 'void' ? phrase`Sign again` : phrase`Sign off`}
          </button>
        )}
        {standing.kind !== 'unsigned' && (
          <button type="button" onClick={takeBack}>
            {phraseOf('sign-off')`Take back`}
          </button>
        )}
      </div>
    </div>
  );
};

interface VoidedProps {
  readonly standing: Extract<Standing, { kind: 'void' }>;
  readonly rested: Rested;
}

const Voided = ({ standing: { signOff, changes }, rested }: VoidedProps) => {
  const { lengths } = useSite();
  const words = { signed: signOff.rested, now: rested, style: lengths };
  return (
    <>
      <p className="fault">
        {phrase`Void: signed by ${signOff.by}, ${signOff.on}, check ${signOff.check}. Since then changed:`}
      </p>
      <ul>
        {changeTexts(changes, words).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  );
};

const SignerFields = ({ signer, onSigner }: Pick<Props, 'signer' | 'onSigner'>) => (
  <div className="pair">
    {(['by', 'on'] as const).map((key) => (
      <TextField
        key={key}
        label={key === 'by' ? phrase`Initials` : phrase`Day`}
        value={signer[key]}
        onEnter={(text) => {
          onSigner({ ...signer, [key]: text.trim() });
          return null;
        }}
      />
    ))}
  </div>
);
