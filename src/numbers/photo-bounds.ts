/** What the marks on a photo may say: the order's door and the page for landmarks go by the same bounds [choice]. */

/** Inches unless said otherwise; both ends are taken. */
export const photoBounds = {
  /** Least pixels of a stick, and of a string: with clicks 3 pixels off at both ends, 100 are wrong by four in a hundred. */
  leastPixels: 100,
  /** Least pixels of an edge of a sheet: clicks 3 pixels off at both ends make it wrong by seven in a hundred, and there are four. */
  leastEdge: 60,
  /** Least and most pixels of a side of the picture: smaller ones show too little, larger ones are not taken by cameras. */
  imageSide: { min: 200, max: 20_000 },
  /**
   * The furthest corner of a sheet is at most so many times as far from the camera as the nearest: a sheet 30 in across its corners and 6 ft
   * away would have to be turned by 45 degrees, and clicks 3 pixels off at edges of 60 make it 1.2.
   */
  mostDepth: 1.33,
  /** A string leans no further than this from upright in any picture worth measuring, degrees. */
  mostLean: 20,
  /** A lens sees this wide at most, degrees: the widest of telephones has about 120. */
  widestView: 120,
  /** A full ring hangs 2 in behind the elbow; a foot of set-back, and clicks and parallax of some inches both ways. */
  ringBehind: { min: -3, max: 16 },
  elbowRoom: { min: 1, max: 9 },
  barrelDepth: { min: 14, max: 36 },
  referenceLength: { min: 4, max: 144 },
  sheetWidth: { min: 4, max: 96 },
  sheetHeight: { min: 4, max: 96 },
  cameraDistance: { min: 48, max: 720 },
} as const;
