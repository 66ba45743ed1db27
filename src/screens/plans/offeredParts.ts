import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import { untoldPart } from '../../site/untold.ts';
import type { Site } from '../../site/site.ts';
import { assumedHardware, type AssumedHardware } from '../../trade/hardware.ts';

/** A hinge or latch that a gate can be given. */
export interface OfferedPart {
  readonly id: HardwareId;
  readonly hardware: Hardware;
}

const slug = (label: string): string =>
  label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40);

/** A part that can be assumed before anybody has measured one, as a site would carry it. */
export const assumedPart = (part: AssumedHardware): OfferedPart => {
  const { kind, label, takes, spread, source } = part;
  const told = { kind, label, takes, spread, from: 'assumed', remark: source.text } as const;
  return { id: `hardware:${slug(label)}`, hardware: { ...untoldPart, ...told } };
};

/** What a site carries of these kinds, then what can be assumed beside it. */
export const offeredParts = (site: Site, kinds: readonly Hardware['kind'][]): OfferedPart[] => {
  const carried = (Object.entries(site.hardware) as [HardwareId, Hardware][]).map(
    ([id, hardware]) => ({ id, hardware }),
  );
  const others = assumedHardware
    .map(assumedPart)
    .filter(({ id }) => !Object.hasOwn(site.hardware, id));
  return [...carried, ...others].filter(({ hardware }) => kinds.includes(hardware.kind));
};
