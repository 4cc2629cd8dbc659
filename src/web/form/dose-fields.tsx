import type { ReactElement } from "react";
import type { Typed } from "../job/typed.ts";
import { QuantityField } from "./quantity-field.tsx";
import { UNITS } from "./units.ts";

const words = {
  least: "Least dose on the label",
  most: "Most dose on the label",
  hint: "Blank: not said.",
};

interface Doses {
  readonly leastDose: Typed;
  readonly mostDose: Typed;
}

interface DoseProps {
  readonly row: Doses;
  readonly path: string;
  /** Name of what is dosed. */
  readonly of: string;
  readonly onChange: (change: Partial<Doses>) => void;
}

/** The range of doses a label allows. */
export function DoseFields({ row, path, of, onChange }: DoseProps): ReactElement {
  return (
    <>
      <QuantityField
        label={words.least}
        path={`${path}.least dose`}
        hint={words.hint}
        value={row.leastDose}
        units={UNITS.dose}
        of={of}
        measure={{ dimension: "dose" }}
        onChange={(leastDose) => {
          onChange({ leastDose });
        }}
      />
      <QuantityField
        label={words.most}
        path={`${path}.most dose`}
        hint={words.hint}
        value={row.mostDose}
        units={UNITS.dose}
        of={of}
        measure={{ dimension: "dose" }}
        onChange={(mostDose) => {
          onChange({ mostDose });
        }}
      />
    </>
  );
}
