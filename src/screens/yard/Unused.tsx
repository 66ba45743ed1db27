import { removeHardware } from '../../site/edits/removeHardware.ts';
import { removeSpec } from '../../site/edits/removeSpec.ts';
import type { HardwareId, SpecId } from '../../site/ids.ts';
import { partsInUse } from '../../site/partsInUse.ts';
import { useSite } from '../bench.ts';
import { useDo } from './cards/useEdit.ts';

/** The builds and parts that the drawing carries and nothing is made of, each with a key to remove it. */
export const Unused = () => {
  const { lines, specs, hardware, gates } = useSite();
  const make = useDo();
  const built = new Set(Object.values(lines).map(({ spec }) => spec));
  const used = partsInUse({ gates });
  const idle = [
    ...(Object.keys(specs) as SpecId[])
      .filter((id) => !built.has(id))
      .map((id) => ({
        id,
        label: specs[id]?.label ?? '',
        remove: () => make('Remove build', (was) => removeSpec(was, id)),
      })),
    ...(Object.keys(hardware) as HardwareId[])
      .filter((id) => !used.has(id))
      .map((id) => ({
        id,
        label: hardware[id]?.label ?? '',
        remove: () => make('Remove part', (was) => removeHardware(was, id)),
      })),
  ];
  if (idle.length === 0) return null;
  return (
    <details className="more">
      <summary>Not used in this yard: {idle.length}</summary>
      <ul className="plain">
        {idle.map(({ id, label, remove }) => (
          <li key={id} className="side">
            <span>{label}</span>
            <button type="button" aria-label={`Remove ${label}`} onClick={remove}>
              Remove
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
};
