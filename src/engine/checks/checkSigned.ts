import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { restsOn } from '../sign/restsOn.ts';
import { standingOf, type SignedChange } from '../sign/standing.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName, oneLine } from './names.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { joined, phrase } from '../../phrases/phrase.ts';
import { restedName, restedValue } from '../../engine/sign/restedName.ts';

/** The sum of all others: it is told after what moved it. */
const opening = 'opening to hold';

const valueTexts = ({ what, from, to }: SignedChange, { lengths }: Site): readonly string[] => {
  const each = (write: (length: number) => string): string[] =>
    [from, to].map((value) =>
      value === null
        ? phrase`nothing`
        : typeof value === 'number'
          ? write(value)
          : oneLine(restedValue(what, value)),
    );
  if (/\bOD$|, fits /.test(what)) return each((length) => pipeSize(inches(length), lengths));
  const texts = each((length) => formatLength(inches(length), fineStyle(lengths)));
  // two sizes that the tape does not tell apart
  return texts[0] === texts[1] ? each((length) => pipeSize(inches(length), lengths)) : texts;
};

const changeText = (change: SignedChange, names: ReadonlyMap<string, string>, site: Site) => {
  const what = restedName(change.what, names);
  const [was = '', is = ''] = valueTexts(change, site);
  return phrase`${what} was ${was}, is ${is}`;
};

const voided = (site: Site, laid: LaidLines, { id }: GateLayout): GateFlag[] => {
  const [gate, layout] = [site.gates[id], laid.gates[id]];
  if (gate === undefined || layout === undefined || gate.signed === null) return [];
  const standing = standingOf(gate, restsOn(site, laid, layout));
  if (standing.kind !== 'void') return [];
  const leaves = leavesOf(gate);
  const names = new Map<string, string>(
    leaves.map((leaf, n) => [leaf.id, leaves.length > 1 ? phrase`leaf ${n + 1}` : phrase`leaf`]),
  );
  const { by, on } = standing.signOff;
  const sum = standing.changes.filter(({ what }) => what === opening);
  const [first, ...rest] = standing.changes.filter(({ what }) => what !== opening);
  const told = [...(first === undefined ? [] : [first]), ...sum].map((change) =>
    changeText(change, names, site),
  );
  const more = rest.length === 0 ? '' : phrase`; ${rest.length} more changed`;
  const day = oneLine(on) === '' ? '' : phrase` of ${oneLine(on)}`;
  const message = phrase`${gateName(site, id)}: the sign-off by ${oneLine(by)}${day} is void: ${joined(told, '; ')}${more}. Check it and sign again.`;
  return [{ level: 'settle', rule: 'sign-off void', message }];
};

/** A sign-off that is void is a flag that says what moved, from what to what; no sign-off is none. */
export const checkSigned = (site: Site, laid: LaidLines): Flag[] =>
  Object.values(laid.gates).flatMap((gate) => plantedAt(gate, voided(site, laid, gate)));
