/** A text as an MTEXT of a DXF has it: no sign of it may end its line or steer the lettering. */
export const dxfText = (text: string): string =>
  text
    .split(/\r\n|\r|\n/)
    .map((one) =>
      one
        .replace(/[\p{Cc}\p{Cs}\u2028\u2029]+/gu, ' ')
        .replace(/[\\{}]/g, '\\$&')
        // %% and a letter would be a sign
        .replace(/%(?=%)/g, '\\U+0025')
        .trim(),
    )
    .join('\\P');
