/** Something to be saved on the device. */
export interface Download {
  readonly name: string;
  /** MIME type. */
  readonly type: string;
  readonly content: BlobPart;
}

/** Long enough for a slow device to have taken the file, in milliseconds. */
const letGo = 60_000;

/** Hands a file to the browser to save. */
export const download = ({ name, type, content }: Download): void => {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), letGo);
};
