import { HardstandError } from "./issue.ts";
import type { DecimalMark } from "./number-text.ts";

/** How a number is to be written. */
export interface FormatOptions {
  /** Significant figures, 1–15; default 3. */
  readonly significant?: number;
  /** Default ".". */
  readonly decimal?: DecimalMark;
  /** Keep zeros at the end, so that the figures stay visible ("2.50"); default false. */
  readonly keepZeros?: boolean;
  /** Unit written after the number. */
  readonly unit?: string;
  /** Part groups of three digits by a narrow no-break space from five digits on; default false. */
  readonly group?: boolean;
}

/**
 * A number as text with a given count of significant figures, never in exponent form, with its unit if given.
 *
 * @throws HardstandError "number-not-finite" for NaN or infinities; "figures-invalid" for a count outside 1–15
 */
export function formatNumber(value: number, options: FormatOptions = {}): string {
  const significant = options.significant ?? 3;
  if (!Number.isFinite(value)) throw new HardstandError("number-not-finite", "formatNumber", { value });
  if (!Number.isInteger(significant) || significant < 1 || significant > 15) {
    throw new HardstandError("figures-invalid", "formatNumber", { significant });
  }
  let text = plainDigits(value, significant);
  if (options.keepZeros !== true && text.includes(".")) text = text.replace(/\.?0+$/, "");
  if (/^-0(?:\.0*)?$/.test(text)) text = text.slice(1);
  let [whole = "", part] = text.split(".");
  if (options.group === true && whole.replace("-", "").length > 4)
    whole = whole.replace(/\B(?=(\d{3})+$)/g, "\u202f");
  part = part === undefined ? "" : `${options.decimal ?? "."}${part}`;
  const number = `${whole}${part}`;
  return options.unit === undefined || options.unit === "" ? number : `${number}\u00a0${options.unit}`;
}

function plainDigits(value: number, significant: number): string {
  if (value === 0) return significant > 1 ? `0.${"0".repeat(significant - 1)}` : "0";
  const [mantissa = "", exponentText = "0"] = value.toExponential(significant - 1).split("e");
  const exponent = Number(exponentText);
  const sign = mantissa.startsWith("-") ? "-" : "";
  const digits = mantissa.replace(/[-.]/g, "");
  if (exponent < 0) return `${sign}0.${"0".repeat(-exponent - 1)}${digits}`;
  const wholeLength = exponent + 1;
  if (digits.length <= wholeLength) return `${sign}${digits}${"0".repeat(wholeLength - digits.length)}`;
  return `${sign}${digits.slice(0, wholeLength)}.${digits.slice(wholeLength)}`;
}
