/** A job on this device; no file has it. */
export type JobId = `job:${string}`;

/** Whether a value that was kept names a job. */
export const isJobId = (value: unknown): value is JobId =>
  typeof value === 'string' && /^job:[0-9a-f]{16}$/.test(value);

/** A name that no other job has: 64 random bits as hexadecimal digits. */
export const freshJobId = (): JobId => {
  // what a page without a safe connection has as well
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return `job:${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
};
