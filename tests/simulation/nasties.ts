import { nasties as spoken } from "../voice/nasties.ts";

/** Text that a page, a sheet, a calendar, a recipe file or a path would take for more than text. */
export function nasties(markerPath: string): string[] {
  return [
    ...spoken(markerPath),
    `<script>fetch("//x")</script>`,
    `<img src=x onerror=alert(1)>`,
    `"><svg/onload=alert(1)>`,
    `</style><script>alert(1)</script>`,
    `&lt;b&gt;&#x3c;script&#x3e;`,
    `javascript:alert(1)`,
    `=HYPERLINK("http://x","y")`,
    `+1+1`,
    `-2+3`,
    `@SUM(A1)`,
    `\t=1+1`,
    `a","b\n"c`,
    `BEGIN:VEVENT\r\nSUMMARY:owned\r\nEND:VEVENT`,
    `x;VALUE=URI:http://x,\\n`,
    `!!js/function 'x'`,
    `&a [*a, *a, *a]`,
    `{{7*7}} \${7*7} <%= 7*7 %>`,
    `__proto__`,
    `constructor`,
    `toString`,
    `CON`,
    `NUL.txt.`,
    `..\\..\\windows\\system32`,
    `/dev/null`,
    "x".repeat(5000),
    "é́́́́́́́".repeat(200),
    "\u{1F469}\u200D\u{1F373}".repeat(50),
  ];
}
