import type { Draft, MixRow, ReadingRow, Typed } from "./draft.ts";

/** A JOB document as plain JSON. */
export type JobDocument = Readonly<Record<string, unknown>>;

/** A number, limit or range followed by something that is not a number: a unit typed into the box. */
const NUMBER_THEN_UNIT =
  /^\s*([<>≤≥~]?\s*[-−]?\d[\d.,\s]*(?:[eE][-+]?\d+)?(?:\s*[-–]\s*\d[\d.,]*)?)\s*(?![eE][-+]?\d)([^\d\s.,<>–-].*?)\s*$/;

/** Splits a unit typed into the number's box from its number; the unit chosen beside it holds otherwise. */
export function splitTyped(typed: Typed): Typed {
  const match = NUMBER_THEN_UNIT.exec(typed.text);
  if (match === null) return typed;
  return { text: (match[1] ?? "").trimEnd(), unit: match[2] ?? "" };
}

/** What a quantity is computed from: what was typed, whatever unit the box shows it in. */
export function typedFirst({ text, unit, asTyped }: Typed): Typed {
  return asTyped ?? { text, unit };
}

/** The quantity as one text, e.g. "200 L/ha"; null when nothing is typed. */
export function quantityText(typed: Typed): string | null {
  if (typed.text.trim() === "") return null;
  const { text, unit } = splitTyped(typedFirst(typed));
  return unit === "" ? text : `${text} ${unit}`;
}

/** The JOB document of a draft: what is blank is left out, what is typed is passed on as typed. */
export function documentOf(draft: Draft): JobDocument {
  const { water, spray, aim } = draft;
  return {
    hardstand: 1,
    ...withoutBlanks({ title: draft.title.trim() === "" ? "" : draft.title }),
    water: withoutBlanks({
      source: water.source,
      sampled: water.sampled,
      method: water.method,
      readings: water.readings.map(readingOf),
    }),
    spray: withoutBlanks({
      volume: quantityText(spray.volume),
      "least volume": quantityText(spray.leastVolume),
      tank: quantityText(spray.tank),
      area: quantityText(spray.area),
      temperature: quantityText(spray.temperature),
      humidity: quantityText(spray.humidity),
      "holding time": quantityText(spray.holdingTime),
      jar: quantityText(spray.jar),
    }),
    mix: [...draft.mix.map(productOf), ...draft.feeds.map((row) => row.document)],
    ...(draft.listsConditioners
      ? {
          conditioners: [
            ...draft.conditioners.map((row) =>
              withoutBlanks({
                chemistry: row.chemistry,
                form: row.form,
                price: quantityText(row.price),
                "least dose": row.leastDose,
                "most dose": row.mostDose,
              }),
            ),
            ...draft.ownProducts.map((row) => row.document),
          ],
        }
      : {}),
    aim: withoutBlanks({ "free share": aim.freeShare, confidence: aim.confidence, where: aim.where }),
    ...(draft.volatilityRules === ""
      ? {}
      : { site: { "volatility rules": draft.volatilityRules === "yes" } }),
  };
}

function readingOf(row: ReadingRow): JobDocument {
  const { text, unit } = splitTyped(typedFirst(row.value));
  return withoutBlanks({ parameter: row.parameter, unit }, { value: text });
}

function productOf(row: MixRow): JobDocument {
  return withoutBlanks({
    active: row.own ?? row.active,
    form: row.form,
    strength: quantityText(row.strength),
    rate: quantityText(row.rate),
    formulation: row.formulation,
    name: row.name,
    price: quantityText(row.price),
  });
}

/** Leaves out what nobody filled in; `kept` stays even when empty. */
function withoutBlanks(entries: Readonly<Record<string, unknown>>, kept: JobDocument = {}): JobDocument {
  const filled = Object.entries(entries).filter(([, value]) => value !== null && value !== "");
  return { ...Object.fromEntries(filled), ...kept };
}
