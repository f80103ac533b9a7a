/** Texts that try to do something: to a spreadsheet, to a terminal; and tables as RFC 4180 shows them. Collected, not invented. */

/** OWASP/www-community@0e5e8f00, pages/attacks/CSV_Injection.md: first characters, and cells in and out. */
export const owaspFirst: readonly string[] = ['=', '+', '-', '@', '\t', '\r', '\n'];
export const owaspCells: readonly (readonly [string, string])[] = [
  ['=1+2";=1+2', '"\'=1+2"";=1+2"'],
  ['=1+2\'" ;,=1+2', '"\'=1+2\'"" ;,=1+2"'],
];

/** swisskyrepo/PayloadsAllTheThings@f9fa5141, CSV Injection/README.md (MIT); the last four were added here. */
export const formulas: readonly string[] = [
  'DDE ("cmd";"/C calc";"!A0")A0',
  "@SUM(1+1)*cmd|' /C calc'!A0",
  "=2+5+cmd|' /C calc'!A0",
  "=cmd|' /C calc'!'A1'",
  '=AAAA+BBBB-CCCC&"Hello"/12345&cmd|\'/c calc.exe\'!A',
  '=HYPERLINK("http://example.invalid","x")',
  '=IMPORTXML("http://example.invalid/csv", "//a/@href")',
  "-2+3+cmd|' /C calc'!A0",
  '\uff1d1+1',
  '%0A=1+1',
];

/** Must stay readable. */
export const harmless: readonly string[] = [
  '-3.5 in',
  '-12.50',
  '+1 555 0100 stays readable',
  '=~ in a note',
];

/** Escape sequences after docs.rs/ftui-render sanitize and docs.rs/par-term-scripting strip_vt_sequences; Linux kernel 63f3a16d on the end of OSC. */
export const escapes: readonly string[] = [
  '\u001b[2J\u001b[H',
  '\u001b]0;owned\u0007',
  '\u001b]0;owned\u001b\\',
  '\u001b]8;;http://example.invalid\u001b\\click\u001b]8;;\u001b\\',
  '\u001b]52;c;ZWNobyBoaQ==\u0007',
  '\u001b[31mred\u001b[0m',
  '\u009b31m',
  '\u009d0;x\u009c',
  '\u001bP1$r0m\u001b\\',
  '\u001b_APC\u001b\\',
  '\u001b^PM\u001b\\',
  '\r\u001b[Koverwritten',
  'line1\rLINE',
  'tab\tbell\u0007',
  '\b\b\b',
  '\u007f',
  '\u202eRTL\u202c',
  '\u2028',
  '\u001b[6n',
  '\u001bc',
];

/** RFC 4180 section 2: rows and how they may be written. */
export const rfcRows: readonly (readonly (readonly string[])[])[] = [
  [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ],
  [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ],
  [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ],
  [
    ['aaa', 'b\r\nbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ],
  [['aaa', 'b"bb', 'ccc']],
];

/** What steers a screen or cannot be seen; the same list stands in docs/csv.md. */
export const signs: readonly string[] = [
  ...['\0', '\u0007', '\b', '\t', '\n', '\v', '\f', '\r', '\u001b', '\u007f', '\u0085', '\u009b', '\u009d'],
  ...['\u00ad', '\u200b', '\u200e', '\u200f', '\u2028', '\u2029', '\u202a', '\u202e', '\u2066', '\u2069'],
  ...['\u2060', '\ufeff', '\ud800', '\u{e0041}'],
];

/** Markup for pages and pictures. */
export const markup: readonly string[] = [
  '<script>alert(1)</script>',
  '"><svg/onload=alert(1)>',
  "' onmouseover='alert(1)",
];
