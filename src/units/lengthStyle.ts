/** How lengths are written: the system, and the finest fraction of an inch where it has one. */
export interface LengthStyle {
  /** `feet` writes 9'-10 1/2", `inches` 118 1/2", `decimal feet` 9.88', `mm` 3005 mm, `m` 3.005 m. */
  readonly system: LengthSystem;
  /** Denominator of the finest fraction of an inch; used by `feet` and `inches` only. */
  readonly fraction: 2 | 4 | 8 | 16 | 32;
}

export type LengthSystem = 'feet' | 'inches' | 'decimal feet' | 'mm' | 'm';
