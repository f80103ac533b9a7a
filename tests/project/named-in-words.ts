/** Sources that no table cites: where they are used instead, or what they are kept for. */

/** A file, and text in it that names the source or quotes it. */
export const namedInWords: Readonly<Record<string, readonly [file: string, words: string]>> = {
  hand: ['tests/truth/units.test.ts', 'hand is'],
  'soviet-draft': ['src/numbers/girth-fit.ts', '210.9 cm girth at 161 cm'],
  'henneke-1983': ['src/order/keys/horse.ts', 'Henneke score'],
  'human-bodies': ['src/numbers/numbers.ts', 'open set of human bodies'],
  'greve-dyson-2013': ['src/numbers/cautions.ts', 'a saddle that keeps going to one side: ask a vet'],
  'millares-ramirez-2019': ['src/numbers/cautions.ts', 'New girthiness'],
  gsl: ['tests/truth/geometry-elliptic.test.ts', 'GNU Scientific Library'],
  cephes: ['tests/support/cephes.d.ts', 'Cephes'],
  'oneill-2014': ['src/math/random.ts', "O'Neill"],
  wgs84: ['tests/truth/geometry-ellipse.test.ts', 'WGS'],
  'nist-sp811': ['tests/truth/units.test.ts', 'SP 811'],
  'rfc-4180': ['src/pages/csv.ts', 'RFC 4180'],
  'bench-price': ['tests/truth/money.test.ts', 'bench price of a trade association'],
  'iso-4217': ['src/units/currency.ts', 'ISO 4217'],
  'owasp-html': ['src/pages/html.ts', 'OWASP'],
  'owasp-csv': ['src/pages/csv.ts', 'OWASP'],
};

export const keptFor: Readonly<Record<string, string>> = {
  'freitag-2021': 'measuring in photographs',
  pinhole: 'measuring in photographs',
  'mohair-data': 'weight and give of cord',
  'paper-mill': 'cutting cord from hanks',
  'moore-1968': 'the order of work at the bench',
};
