/** A grade (rise over run, finite) in percent with its sign and one decimal: `+8.5 %`, level `0 %`. */
export const gradeText = (grade: number): string => {
  const tenths = Math.round(Math.abs(grade) * 1000);
  const sign = grade < 0 ? '-' : '+';
  return `${tenths === 0 ? '' : sign}${tenths / 10} %`;
};
