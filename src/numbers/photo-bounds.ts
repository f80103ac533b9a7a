/** Bounds for marks on a photo, for orders and the page for marks [choice]. */

/** Inches unless noted, inclusive. */
export const photoBounds = {
  /** Pixels of a stick or string: clicks 3 off at both ends are 4%. */
  leastPixels: 100,
  /** Pixels of a sheet's edge: clicks 3 off at both ends are 7%; it has four. */
  leastEdge: 60,
  /** Pixels; no camera takes more. */
  imageSide: { min: 200, max: 20_000 },
  /**
   * Farthest over nearest corner: a sheet of 30 in diagonal, 6 ft away, turned 45 degrees; bad clicks reach
   * 1.2.
   */
  mostDepth: 1.33,
  /** Degrees. */
  mostLean: 20,
  /** Degrees; the widest phone lenses see about 120. */
  widestView: 120,
  /** 2 in behind the elbow at full, a foot of set-back, some inches of error both ways. */
  ringBehind: { min: -3, max: 16 },
  elbowRoom: { min: 1, max: 9 },
  barrelDepth: { min: 14, max: 36 },
  referenceLength: { min: 4, max: 144 },
  sheetWidth: { min: 4, max: 96 },
  sheetHeight: { min: 4, max: 96 },
  cameraDistance: { min: 48, max: 720 },
} as const;
