import names from "../../../data/sheet-names.json" with { type: "json" };
import { isKnownName, plainName, unspaced } from "./names.ts";

/** Roles a column of a sheet may have. */
export type ColumnRole = keyof typeof names.roles;

const ROLES = new Map<string, ColumnRole>(
  (Object.keys(names.roles) as ColumnRole[]).flatMap((role) =>
    names.roles[role].map((word) => [plainName(word), role] as const),
  ),
);

/** Words that give a column its role wherever they stand in its heading: a limit before a result. */
const ROLE_WORDS = (["ignored", "value", "unit"] as const).map(
  (role) => [role, new Set(names.roleWords[role])] as const,
);

/** The role a heading gives its column, or null. */
export function roleOf(heading: string): ColumnRole | null {
  return roleAsListed(heading) ?? roleByWords(heading, plainName(heading));
}

/** The role of a heading that stands in the list as a whole, or null. */
export function roleAsListed(heading: string): ColumnRole | null {
  const bare = plainName(heading.replace(/(?:[([]|±|\+\/-).*$/, ""));
  return ROLES.get(bare) ?? ROLES.get(plainName(heading)) ?? ROLES_UNSPACED.get(unspaced(bare)) ?? null;
}

const ROLES_UNSPACED = new Map([...ROLES].map(([word, role]) => [unspaced(word), role]));

/** "Grenzwert TrinkwV", "Result for this sample", and "Ergebni" where a narrow column cut the heading off. */
function roleByWords(heading: string, plain: string): ColumnRole | null {
  if (plain === "" || isKnownName(heading) || readsAsWhole(heading)) return null;
  const words = plain.split(" ");
  const found = ROLE_WORDS.find(([, known]) => words.some((word) => known.has(word)));
  if (found !== undefined) return found[0];
  if (plain.length < CUT_LEAST) return null;
  const cut = [...ROLES].filter(
    ([word]) => word.startsWith(plain) && word.length - plain.length <= CUT_MOST && !word.includes(" "),
  );
  const roles = new Set(cut.map(([, role]) => role));
  return roles.size === 1 ? [...roles][0]! : null;
}

/** Letters that a heading cut off still has at least, and those it lacks at most. */
const CUT_LEAST = 4;
const CUT_MOST = 3;

/** "Sample: Top bore", a sentence: more than the heading of a column. */
const readsAsWhole = (text: string): boolean => /:\s*\S/.test(text) || text.length > 60;
