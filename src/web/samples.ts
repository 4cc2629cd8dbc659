import dicamba from "../../examples/jobs/dicamba.yaml";
import ironBore from "../../examples/jobs/iron-bore.yaml";
import stripOnly from "../../examples/jobs/strip-only.yaml";
import topBore from "../../examples/jobs/top-bore.yaml";

/** A finished sample job, made up for looking around. */
export interface Sample {
  readonly name: string;
  readonly document: unknown;
}

/** The samples, the one that opens first at the top. */
export const SAMPLES: readonly Sample[] = [
  { name: "Top bore, hard", document: topBore },
  { name: "Iron-bearing bore", document: ironBore },
  { name: "Strip reading only", document: stripOnly },
  { name: "Dicamba in the mix", document: dicamba },
];
