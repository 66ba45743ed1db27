/** An id of a kind, such as `hardware`, that no other device gives. */
export const freshId = <Kind extends string>(kind: Kind): `${Kind}:${string}` => {
  // randomUUID is missing where the page is not served over https
  const digits = Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  );
  return `${kind}:${digits.join('')}`;
};
