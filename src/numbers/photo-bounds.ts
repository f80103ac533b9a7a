/** What marks on a photo may say; order files and the page for marks share these bounds [choice]. */

/** Inches unless noted, inclusive. */
export const photoBounds = {
  /** Pixels of a stick or string: clicks 3 pixels off at both ends are 4% of 100. */
  leastPixels: 100,
  /** Pixels of a sheet's edge: clicks 3 pixels off at both ends are 7%, and there are four edges. */
  leastEdge: 60,
  /** Pixels of a side of the picture; no camera takes larger ones. */
  imageSide: { min: 200, max: 20_000 },
  /**
   * Farthest over nearest corner's distance: a sheet 30 in corner to corner, 6 ft away, would be turned 45
   * degrees; bad clicks alone reach 1.2.
   */
  mostDepth: 1.33,
  /** Degrees a string may lean. */
  mostLean: 20,
  /** Degrees; the widest phone lenses see about 120. */
  widestView: 120,
  /** 2 in behind the elbow at full, up to a foot of set-back, and some inches of error both ways. */
  ringBehind: { min: -3, max: 16 },
  elbowRoom: { min: 1, max: 9 },
  barrelDepth: { min: 14, max: 36 },
  referenceLength: { min: 4, max: 144 },
  sheetWidth: { min: 4, max: 96 },
  sheetHeight: { min: 4, max: 96 },
  cameraDistance: { min: 48, max: 720 },
} as const;
