/** A job on this device; no file has it. */
export type JobId = `job:${string}`;

/** A name that no other job has: 64 random bits as hexadecimal digits. */
export const freshJobId = (): JobId => {
  // what a page without a safe connection has as well
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return `job:${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
};
