/** What tells a job from all others in its files: 128 random bits as hexadecimal digits. */
export const freshJob = (): string => {
  // what a page without a safe connection has as well
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
};
