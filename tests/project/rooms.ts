/**
 * The rooms of src/ from the ground up: what each may import, and why. A room's name is its path; it imports only
 * rooms above it.
 */

export interface Room {
  readonly why: string;
  /** Rooms whose code it may use. */
  readonly uses: readonly string[];
  /** Rooms of which it may use only types. */
  readonly types?: readonly string[];
  readonly packages?: readonly string[];
  /** Exceptions: functions it may call in rooms of `types`. */
  readonly calls?: Readonly<Record<string, readonly string[]>>;
}

export const rooms: Readonly<Record<string, Room>> = {
  units: {
    why: 'Units parse and print lengths, money, days and words: they know no horse, no shop and no machine.',
    uses: [],
    packages: ['fastest-levenshtein'],
  },
  numbers: { why: 'A number with its basis and its source drags no code along.', uses: ['units'] },
  math: { why: 'Math knows no horse and no shop.', uses: ['units'] },
  pages: {
    why: 'Pages print any sheet, on a screen, as Markdown, HTML or PDF, and rows and JSON: they know no order, shop or file.',
    uses: ['units'],
    packages: ['chalk', 'cli-table3', 'pdfkit', 'fontkit'],
  },
  yaml: {
    why: 'Text becomes a located tree here, which knows no order.',
    uses: ['units'],
    packages: ['yaml'],
  },
  order: {
    why: 'Order is the one door: a tree becomes checked values here and nowhere else.',
    uses: ['units', 'numbers', 'math', 'yaml'],
    packages: ['zod', 'yaml'],
  },
  'photo/read': {
    why: 'Clicks on a photo become lengths: it is handed what is known of the barrel and opens no picture.',
    uses: ['units', 'numbers', 'math'],
    types: ['order'],
  },
  horse: {
    why: 'What is derived of horse and saddle comes before anyone judges: it knows no rule and no stock.',
    uses: ['units', 'numbers', 'math', 'photo/read'],
    types: ['order'],
  },
  cinch: {
    why: 'What the shop can tie, laid on one horse: it measures and does not judge.',
    uses: ['units', 'numbers', 'math', 'horse'],
    types: ['order'],
  },
  rules: {
    why: 'A rule judges what it is handed and never fetches, so it may know only the types of horse and cinch; what a buckle takes is worked out in one place.',
    uses: ['units', 'numbers'],
    types: ['order', 'horse', 'cinch'],
    calls: {
      'cinch/buckles.ts': ['layersOn', 'isUsualLayer'],
      'horse/practice.ts': ['isTied', 'isUsual'],
      'horse/sore.ts': ['isGalled'],
    },
  },
  advice: {
    why: 'Advice lets candidates meet rules, ranks them and says what to ask; it reads no text and prints none.',
    uses: ['units', 'numbers', 'math', 'horse', 'cinch', 'rules'],
    types: ['order'],
  },
  learn: {
    why: 'Learning turns outcomes into numbers of the model: it lays the cinches that were tied, and judges none.',
    uses: ['units', 'numbers', 'math', 'horse', 'cinch'],
    types: ['order', 'yaml'],
  },
  work: {
    why: "Work is the bench's arithmetic: quotes, tickets, cutting, days and rows of a backlog, made of finished advice. It reads no clock and prints nothing.",
    uses: ['units', 'numbers', 'cinch', 'advice'],
    types: ['order', 'horse', 'rules', 'yaml'],
  },
  words: {
    why: 'Every phrase people read, by screen.',
    uses: ['units', 'numbers', 'pages', 'cinch', 'horse', 'advice', 'learn', 'work'],
    types: ['order', 'yaml', 'photo/read', 'rules', 'math'],
  },
  views: {
    why: 'A finished result becomes a sheet, rows and JSON: views compute nothing.',
    uses: ['units', 'numbers', 'pages', 'words', 'cinch', 'horse', 'advice', 'learn', 'work'],
    types: ['order', 'yaml', 'photo/read', 'rules', 'math'],
  },
  draw: {
    why: 'Pictures are drawn from finished advice by what cinch measured. They open no file and draw no pixel.',
    uses: ['units', 'numbers', 'math', 'pages', 'cinch', 'horse', 'words'],
    types: ['order', 'advice', 'views'],
    calls: { 'advice/judge.ts': ['isUnsure'] },
    packages: ['pdfkit', '@resvg/resvg-js'],
  },
  'photo/pixels': {
    why: 'Bytes of pictures become headers and pixels, and pixels become bytes, in WebAssembly: it knows no order, and is handed every byte.',
    uses: [],
    packages: ['@jsquash/jpeg', '@jsquash/png'],
  },
  'photo/drawn': {
    why: 'The cinch drawn on a photo, by what was read from it: it draws no pixel.',
    uses: ['units', 'math', 'pages', 'photo/read', 'cinch', 'words', 'draw'],
    types: ['horse', 'advice', 'photo/pixels'],
  },
  'photo/pick': {
    why: 'The page on which landmarks are clicked, as words and arithmetic: it runs in a browser too, so it opens and keeps nothing.',
    uses: ['units', 'numbers', 'math', 'photo/read', 'pages'],
    types: ['order'],
  },
  'photo/browser': {
    why: 'The script of that page: it alone knows windows, fingers and keys, and it is built apart from the program.',
    uses: ['photo/pick'],
    types: ['order'],
  },
  index: {
    why: 'The index is the whole idea on one screen.',
    uses: ['horse', 'cinch', 'rules', 'advice'],
    types: ['order'],
  },
  cli: {
    why: 'Cli alone touches the machine: files, clock, colors, exit codes.',
    uses: [
      'units',
      'numbers',
      'math',
      'pages',
      'yaml',
      'order',
      'photo/read',
      'horse',
      'cinch',
      'rules',
      'advice',
      'learn',
      'work',
      'words',
      'views',
      'draw',
      'photo/pixels',
      'photo/drawn',
      'photo/pick',
      'index',
    ],
    packages: ['commander', 'tinyglobby', '@clack/core', 'node:*'],
  },
};
