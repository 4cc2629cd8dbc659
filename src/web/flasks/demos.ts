import amounts from "../../../examples/demos/amounts-to-find.yaml";
import hardness from "../../../examples/demos/hardness-dye.yaml";
import held from "../../../examples/demos/iron-held-and-freed.yaml";
import own from "../../../examples/demos/own-indicator.yaml";
import salicylate from "../../../examples/demos/salicylate.yaml";
import thiocyanate from "../../../examples/demos/thiocyanate.yaml";
import tiron from "../../../examples/demos/tiron-and-citric-acid.yaml";
import whatThePhDoes from "../../../examples/demos/what-the-ph-does.yaml";

/** A ready demonstration. */
export interface ReadyDemo {
  readonly name: string;
  readonly document: unknown;
}

/** The ready demonstrations, the one that opens first at the top. */
export const DEMOS: readonly ReadyDemo[] = [
  { name: "Who holds the iron?", document: held },
  { name: "What the pH of a tank changes", document: whatThePhDoes },
  { name: "Hardness dye at pH 10", document: hardness },
  { name: "Salicylate, violet", document: salicylate },
  { name: "Thiocyanate, red", document: thiocyanate },
  { name: "Tiron, blue", document: tiron },
  { name: "Amounts found for bottles", document: amounts },
  { name: "Indicator typed in by hand", document: own },
];
