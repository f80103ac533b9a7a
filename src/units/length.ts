/** A length inside the program is a plain number of inches. */
export type Inches = number;
