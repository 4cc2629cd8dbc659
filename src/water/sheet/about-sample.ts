import type { SheetRow } from "./cells.ts";
import { roleOf } from "./column-roles.ts";
import type { ColumnRole } from "./column-roles.ts";

/** What a line says about the sample as a whole. */
export interface About {
  readonly role: ColumnRole;
  readonly value: string;
}

/** "Sample: Top bore", "Date sampled: 2026-03-02", in a cell of its own or parted over two, several in a line. */
export function aboutSample({ cells }: SheetRow): readonly About[] {
  return cells.flatMap((cell, i): readonly About[] => {
    const split = /^([^:]{2,40}):\s*(.+)$/.exec(cell);
    const heading = split?.[1] ?? cell.replace(/:$/, "");
    // Without a colon only the first cell of a line is taken as what the next one is about.
    const value = split?.[2] ?? (i === 0 || cell.endsWith(":") ? (cells[i + 1] ?? "") : "");
    const role = roleOf(heading);
    return role === null || value === "" ? [] : [{ role, value }];
  });
}

/** An ISO date, or a day that can be read in one way only ("14.03.2026", "25/3/2026"); null otherwise. */
export function plainDate(text: string): string | null {
  const iso = /^(\d{4})-(\d{2})-(\d{2})/.exec(text.trim());
  if (iso !== null) return iso[0];
  const parts = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(text.trim());
  if (parts === null) return null;
  const [, a = "", mark = "", b = "", year = ""] = parts;
  const [first, second] = [Number(a), Number(b)];
  const iso8601 = (month: number, day: number): string =>
    `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  if (first > 12 && second <= 12) return iso8601(second, first);
  if (second > 12 && first <= 12) return iso8601(first, second);
  // A point parts day from month wherever it is used in dates.
  return mark === "." && second <= 12 ? iso8601(second, first) : null;
}
