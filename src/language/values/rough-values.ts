/** Words with which a reading or a count is not what its number says. */
export const RISING =
  /\b(coming|heading|creeping|climbing|getting|working) (back |right )?(up |on )*to/;
export const RISEN_NEAR =
  /\b(coming|going|getting|creeping|climbing) (back |right )?(up )?(on|toward)\b/;
export const SHORT = /\b(under|below|near|close to|shy of|short of|somewhere|between|toward)\b/;
export const OR_ANOTHER =
  /\bor (maybe )?(one|two|three|four|five|six|seven|eight|nine|ten|eleven|\d+)\b/;
