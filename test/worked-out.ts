const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/**
 * What the numbers of a sum come to when a hand works them out: × ÷ + − ^ and brackets by the usual order, `e` for
 * Euler's number, "10⁻⁴" with its raised digits, decimals with a point. Units are left away.
 *
 * @throws Error where something stands that is no number, sign, bracket or unit
 */
export function workedOut(numbers: string): number {
  const tokens = tokensOf(numbers);
  let at = 0;
  const takes = (sign: string): boolean => {
    if (tokens[at] !== sign) return false;
    at += 1;
    return true;
  };
  const sum = (): number => {
    let total = takes("−") ? -product() : product();
    for (;;) {
      if (takes("+")) total += product();
      else if (takes("−")) total -= product();
      else return total;
    }
  };
  const product = (): number => {
    let total = power();
    for (;;) {
      if (takes("×")) total *= power();
      else if (takes("÷")) total /= power();
      else return total;
    }
  };
  const power = (): number => {
    const base = atom();
    return takes("^") ? base ** atom() : base;
  };
  const atom = (): number => {
    if (takes("(")) {
      const inside = sum();
      if (!takes(")")) throw new Error(`a bracket is left open in ${numbers}`);
      return inside;
    }
    const token = tokens[at] ?? "";
    at += 1;
    if (token === "e") return Math.E;
    if (!/^\d/.test(token)) throw new Error(`“${token}” is no number in ${numbers}`);
    return Number(token);
  };
  const total = sum();
  if (at < tokens.length) throw new Error(`“${tokens[at] ?? ""}” is left over in ${numbers}`);
  return total;
}

function tokensOf(numbers: string): readonly string[] {
  const plain = numbers
    .replace(/10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, raised: string) => `10 ^ (${lowered(raised)})`)
    // Units: words with what they are per, such as "mmol/L", "/h" and "100 US gal" behind a number.
    .replace(/(?<![\d.])\/?(?!e\^)[A-Za-z°][A-Za-z0-9]*(?:\/[A-Za-z0-9]+)*|\/[A-Za-z]+/g, " ");
  return plain.match(/\d+(?:\.\d+)?|[×÷+−^()]|e(?=\^)|\S/g) ?? [];
}

function lowered(raised: string): string {
  return [...raised].map((sign) => (sign === "⁻" ? "−" : String(RAISED.indexOf(sign)))).join("");
}
