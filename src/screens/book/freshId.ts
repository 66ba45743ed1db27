import type { HardwareId } from '../../site/ids.ts';

/** An id that no other device gives to a part. */
export const freshId = (): HardwareId => {
  // randomUUID is missing where the page is not served over https
  const digits = Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  );
  return `hardware:${digits.join('')}`;
};
