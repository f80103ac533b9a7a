/** The rooms of src/ from the ground up: what each may import, and why. A room may only import rooms above it in this list. */

export interface Room {
  readonly why: string;
  /** Rooms whose code it may use. */
  readonly uses: readonly string[];
  /** Rooms of which it may know the types only; they are gone when the program runs. */
  readonly types?: readonly string[];
  readonly packages?: readonly string[];
  /** Single functions it may call in a room of which it knows the types only. */
  readonly calls?: Readonly<Record<string, readonly string[]>>;
}

export const rooms: Readonly<Record<string, Room>> = {
  units: {
    why: 'Units parse and print: they know no horse, no shop and no machine.',
    uses: [],
    packages: ['fastest-levenshtein'],
  },
  sources: { why: 'A citation drags no code along.', uses: [] },
  geometry: { why: 'Geometry is pure mathematics: it knows no horse and no shop.', uses: ['units'] },
  cutting: {
    why: 'Which cord is cut from which put-up is arithmetic on lengths: it knows no order file and no shop.',
    uses: ['units'],
  },
  schedule: {
    why: 'Benches, jobs and days are plain data: it knows no order file, no shop and no clock.',
    uses: ['units'],
  },
  order: {
    why: 'Order is the one door: text becomes checked values here and nowhere else, so only it may parse YAML.',
    uses: ['units', 'sources', 'geometry'],
    packages: ['zod', 'yaml'],
  },
  photo: {
    why: 'Photo turns clicks on a picture into lengths: it is handed what is known of the barrel and opens no picture.',
    uses: ['units', 'sources', 'geometry'],
    types: ['order'],
  },
  facts: {
    why: 'Facts are derived before anyone judges: they know no rule and no stock.',
    uses: ['units', 'sources', 'geometry', 'photo'],
    types: ['order'],
  },
  stock: {
    why: 'Stock is what the shop can make, whatever the horse.',
    uses: ['units', 'sources'],
    types: ['order'],
  },
  fit: {
    why: 'Fit lays one candidate on one horse: it measures and does not judge.',
    uses: ['units', 'sources', 'geometry', 'facts', 'stock'],
    types: ['order'],
  },
  rules: {
    why: 'A rule judges what it is handed and never fetches, so it may know only the types of facts, fit and stock; what a buckle takes is reckoned in one place.',
    uses: ['units', 'sources'],
    types: ['order', 'facts', 'stock', 'fit'],
    calls: {
      'stock/buckles.ts': ['layersOn', 'isUsualLayer'],
      'facts/practice.ts': ['isTied', 'isUsual'],
      'facts/sore.ts': ['isGalled'],
    },
  },
  advice: {
    why: 'Advice lets candidates meet rules and ranks them; it reads no text and prints none.',
    uses: ['units', 'sources', 'geometry', 'facts', 'stock', 'fit', 'rules'],
    types: ['order'],
  },
  ask: {
    why: 'Asking sizes an order anew for what a tape may read; it knows no customer, prints nothing, and sizing does not wait for it.',
    uses: ['units', 'sources', 'geometry', 'facts', 'fit', 'advice'],
    types: ['order'],
  },
  learn: {
    why: 'Learning turns outcomes into numbers of the model: it lays the cinches that were tied, and judges none.',
    uses: ['units', 'sources', 'geometry', 'facts', 'stock', 'fit'],
    types: ['order'],
  },
  paper: {
    why: 'Papers are made of finished advice: a quote, a ticket, the materials and the days of a backlog. They read no clock and print nothing.',
    uses: ['units', 'sources', 'cutting', 'schedule', 'stock'],
    types: ['order', 'facts', 'fit', 'rules', 'advice'],
    // What the customer asked for is judged when a paper tells it.
    calls: { 'advice/check.ts': ['checkCinch'] },
  },
  backlog: {
    why: 'Backlog makes rows of advice and keeps count of them; it opens no file and prints nothing.',
    uses: ['units', 'sources', 'stock'],
    types: ['order', 'advice'],
  },
  report: {
    why: 'Printers read a finished result and compute nothing.',
    uses: ['units', 'sources', 'stock', 'ask', 'learn', 'backlog'],
    types: ['geometry', 'cutting', 'schedule', 'order', 'photo', 'facts', 'fit', 'rules', 'advice', 'paper'],
    packages: ['chalk', 'cli-table3'],
    // What few readers want is put together when a printer asks for it.
    calls: { 'facts/facts.ts': ['workingOf'], 'advice/check.ts': ['checkCinch'] },
  },
  picture: {
    why: 'Pictures are drawn from finished advice by what fit measured: plain shapes, then text. They open no file and draw no pixel.',
    uses: ['units', 'sources', 'geometry', 'photo', 'stock', 'fit', 'report'],
    types: ['order', 'facts', 'advice'],
  },
  print: {
    why: 'Print lays finished papers and pictures out on pages: it knows the page model and the widths of letters, and no order, shop or file.',
    uses: ['units', 'report', 'picture'],
    packages: ['pdfkit', 'fontkit', '@resvg/resvg-js'],
  },
  raster: {
    why: 'Raster turns files of pictures into pixels and back, in WebAssembly: it knows no order, and is handed every byte.',
    uses: [],
    packages: ['@jsquash/jpeg', '@jsquash/png'],
  },
  pick: {
    why: 'Pick is the page on which landmarks are clicked, as far as it is words and arithmetic: it runs in a browser too, so it opens and keeps nothing.',
    uses: ['units', 'sources', 'geometry', 'photo', 'report'],
    types: ['order'],
  },
  browser: {
    why: 'Browser is the script of that page: it alone knows windows, fingers and keys, and it is built apart from the program.',
    uses: ['pick'],
  },
  index: {
    why: 'The index is the whole idea on one screen.',
    uses: ['facts', 'stock', 'rules', 'advice'],
    types: ['order'],
  },
  cli: {
    why: 'Cli alone touches the machine: files, clock, colors, exit codes.',
    uses: [
      'units',
      'sources',
      'geometry',
      'cutting',
      'schedule',
      'order',
      'photo',
      'facts',
      'stock',
      'fit',
      'rules',
      'advice',
      'ask',
      'learn',
      'paper',
      'backlog',
      'report',
      'picture',
      'print',
      'raster',
      'pick',
      'index',
    ],
    packages: ['commander', 'tinyglobby', 'node:*'],
  },
};
