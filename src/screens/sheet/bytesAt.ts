/** The bytes of a part of the program; rejects where it cannot be had. */
export const bytesAt = async (address: string): Promise<Uint8Array> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`a part of the sheet: expected it at ${address}`);
  return new Uint8Array(await answer.arrayBuffer());
};
