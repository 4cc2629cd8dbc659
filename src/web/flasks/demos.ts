import amounts from "../../../examples/demos/amounts-to-find.yaml?raw";
import hardness from "../../../examples/demos/hardness-dye.yaml?raw";
import held from "../../../examples/demos/iron-held-and-freed.yaml?raw";
import own from "../../../examples/demos/own-indicator.yaml?raw";
import salicylate from "../../../examples/demos/salicylate.yaml?raw";
import thiocyanate from "../../../examples/demos/thiocyanate.yaml?raw";
import tiron from "../../../examples/demos/tiron-and-citric-acid.yaml?raw";
import whatThePhDoes from "../../../examples/demos/what-the-ph-does.yaml?raw";

/** A ready demonstration as its document. */
export interface ReadyDemo {
  readonly name: string;
  readonly text: string;
}

/** The ready demonstrations, the one that opens first at the top. */
export const DEMOS: readonly ReadyDemo[] = [
  { name: "Who holds the iron?", text: held },
  { name: "What the pH of a tank changes", text: whatThePhDoes },
  { name: "Hardness dye at pH 10", text: hardness },
  { name: "Salicylate, violet", text: salicylate },
  { name: "Thiocyanate, red", text: thiocyanate },
  { name: "Tiron, blue", text: tiron },
  { name: "Amounts found for bottles", text: amounts },
  { name: "Indicator typed in by hand", text: own },
];
