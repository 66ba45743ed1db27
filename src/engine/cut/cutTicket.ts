import type { Inches } from '../../units/inches.ts';

/** One piece to be cut, and what it is for: a name that the person with the saw can write on it. */
export interface TicketPiece {
  readonly length: Inches;
  readonly for: string;
}

/** One stick: its pieces in the order in which they are cut, and what is left over. Inches. */
export interface TicketStick {
  readonly from: 'bought' | 'offcut';
  readonly stick: Inches;
  readonly pieces: readonly TicketPiece[];
  readonly left: Inches;
}

/** All cuts of one sort of stick. */
export interface CutTicket {
  readonly sticks: readonly TicketStick[];
  readonly bought: number;
  /** Nobody can do with fewer: proven. Where it is `bought`, the plan is proven to be the best. */
  readonly least: number;
  /** Pieces longer than any stick: cut from none. */
  readonly tooLong: readonly TicketPiece[];
  /** How many joints of two pieces end to end the plan has. */
  readonly joints: number;
}
