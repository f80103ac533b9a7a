/** Checks a Node version against `engines`. */

type Version = readonly [number, number, number];

const numbers = (text: string): number[] => text.split('.').map(Number);

function parsed(text: string): Version {
  const [major = 0, minor = 0, patch = 0] = numbers(text);
  return [major, minor, patch];
}

const compare = (a: Version, b: Version): number => a[0] - b[0] || a[1] - b[1] || a[2] - b[2];

/** Such as "^20.19.0 || >=22.12". @throws on other forms */
export function nodeSatisfies(version: string, range: string): boolean {
  return range.split('||').some((part) =>
    [...part.trim().matchAll(/(\^|~|>=|<=|>|<|=)?\s*v?([\d.*x]+)/g)].every(
      ([whole, sign = '', bound = '']) => {
        if (bound === '') throw new Error(`unknown range "${whole}"`);
        return within(parsed(version), sign, bound);
      },
    ),
  );
}

function within(version: Version, sign: string, bound: string): boolean {
  const plain = bound.replace(/\.?[*x].*$/, '');
  const low = parsed(plain);
  const given = plain === '' ? 0 : numbers(plain).length;
  const order = compare(version, low);
  switch (sign) {
    case '^':
      return order >= 0 && version[0] === low[0];
    case '~':
      return order >= 0 && version[0] === low[0] && version[1] === low[1];
    case '>=':
      return order >= 0;
    case '<':
      return order < 0;
    case '<=':
      return order <= 0;
    case '>':
      return order > 0;
    default:
      return version.slice(0, given).every((part, i) => part === low[i]);
  }
}
