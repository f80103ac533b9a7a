/** Cord in feet and inches, to the eighth. */

export const EIGHTHS_A_FOOT = 96;

/** Rounds down, so we never count cord we lack. */
export const wholeEighths = (feet: number): number => Math.floor(feet * EIGHTHS_A_FOOT);

/** Eighths of an inch as inches. */
export const inchesOf = (eighths: number): number => eighths / 8;

/** Feet as inches. */
export const inchesOfFeet = (feet: number): number => 12 * feet;

/** "61 ft", "12 ft 6 1/8 in", "7 in". */
export function feetText(eighths: number): string {
  const feet = Math.floor(eighths / EIGHTHS_A_FOOT);
  const rest = eighths - feet * EIGHTHS_A_FOOT;
  if (rest === 0) return `${String(feet)} ft`;
  const inches = `${inchText(rest)} in`;
  return feet === 0 ? inches : `${String(feet)} ft ${inches}`;
}

function inchText(eighths: number): string {
  const whole = Math.floor(eighths / 8);
  const part = eighths - whole * 8;
  if (part === 0) return String(whole);
  const under = part % 4 === 0 ? 2 : part % 2 === 0 ? 4 : 8;
  const fraction = `${String((part * under) / 8)}/${String(under)}`;
  return whole === 0 ? fraction : `${String(whole)} ${fraction}`;
}
