import dicamba from "../../examples/jobs/dicamba.yaml?raw";
import ironBore from "../../examples/jobs/iron-bore.yaml?raw";
import stripOnly from "../../examples/jobs/strip-only.yaml?raw";
import topBore from "../../examples/jobs/top-bore.yaml?raw";
import { parse } from "yaml";

/** A finished sample job, made up for looking around. */
export interface Sample {
  readonly name: string;
  readonly document: unknown;
}

/** The samples, the one that opens first at the top. */
export const SAMPLES: readonly Sample[] = [
  { name: "Top bore, hard", document: parse(topBore) },
  { name: "Iron-bearing bore", document: parse(ironBore) },
  { name: "Strip reading only", document: parse(stripOnly) },
  { name: "Dicamba in the mix", document: parse(dicamba) },
];
