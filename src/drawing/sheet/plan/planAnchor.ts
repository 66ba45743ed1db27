/** What links call the plan on a sheet, by the number of that sheet. */
export const planAnchor = (sheet: number): string => `plan:${sheet}`;
