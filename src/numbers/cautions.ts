/** Cautions printed on every paper. */

export const cautions: readonly string[] = [
  'A sizing aid, not a saddle fitting and not veterinary advice; local rules and qualified practitioners come first.',
  'Do not ride on broken skin.',
  'New girthiness, or a saddle that keeps going to one side: ask a vet.',
  'Place the saddle for the shoulder first; never move it forward to make a cinch hang plumb.',
  'Tighten in stages and check again after ten minutes: new mohair stretches.',
  'Front cinch on first and off last.',
  'Inspect cord, hardware and off billet every ride; no load rating is claimed.',
];

/** Printed under every screen. */
export const shortCaution = 'Sizing aid, not veterinary advice; qualified practitioners, local rules first.';
