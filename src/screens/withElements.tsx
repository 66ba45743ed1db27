import { Fragment, type ReactNode } from 'react';

/** Signs for private use, which nobody types: the places of elements in a phrase. */
const first = 0xe000;
const spots = /([\uE000-\uE0FF])/;

/** What fills the hole of a phrase at which element `n` is to stand, counted from 0. */
export const spot = (n: number): string => String.fromCharCode(first + n);

/**
 * A phrase with elements in it, each where a hole was filled by its `spot`, in whatever order the language
 * has them: `withElements(phrase`Holds from ${spot(0)}`, [<b>4'</b>])`. A spot without an element shows nothing.
 */
export const withElements = (said: string, elements: readonly ReactNode[]): ReactNode =>
  said
    .split(spots)
    .map((part, n) => (
      <Fragment key={n}>{n % 2 === 0 ? part : elements[part.charCodeAt(0) - first]}</Fragment>
    ));
