import { money, type Money } from './money.ts';
import { read, unread, type Parsed } from './parsed.ts';
import { quotedText } from './quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

const form = /^(\d{1,9}|\d{1,3}(?:,\d{3}){1,2})(?:\.(\d{1,6}))?$/;

/**
 * A price as price lists have it: digits, a point before up to six decimals, commas only between groups of
 * three. A comma before decimals is refused, since `1,250` would mean two things, and so is what is below 0.
 */
export const parseMoney = (text: string): Parsed<Money> => {
  const bare = text.trim();
  if (bare.startsWith('-')) return unread(phrase`expected 0 or more, found ${quotedText(text)}`);
  const found = form.exec(bare);
  if (found === null) {
    const comma = /^\d+,\d{1,2}$|^\d{1,3}(?:\.\d{3})+,\d+$/.test(bare);
    return unread(
      comma
        ? phrase`expected a point before the decimals, as in 12.50; found ${quotedText(text)}`
        : phrase`expected a price such as 12.50, found ${quotedText(text)}`,
    );
  }
  const [, units = '0', decimals = ''] = found;
  return read(money(BigInt(units.replaceAll(',', '') + decimals.padEnd(6, '0'))));
};
