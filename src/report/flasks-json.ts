import type { FlaskShow, FlaskState, ShowCheck } from "../agronomy/index.ts";
import type { ColourLook } from "../colour/index.ts";
import { addedText, cloudText, colourText, sameContentsText } from "./flask-looks.ts";
import type { DesignOutcome } from "./flasks-text.ts";

/**
 * A demonstration as other programs read it, by the schema of demonstrations computed: figures, and beside them what is
 * seen and done in English.
 *
 * @param check null unless colours seen were given
 * @param design null unless amounts were to be found
 */
export function flasksJson(show: FlaskShow, check: ShowCheck | null, design: DesignOutcome | null): object {
  const { sameContents, sources, versions, ...rest } = show;
  return {
    ...rest,
    flasks: show.flasks.map((flask) => ({
      ...flask,
      start: stateJson(flask.start),
      steps: flask.steps.map(stateJson),
    })),
    remarks: sameContents.map((same) => ({ text: sameContentsText(same), source: null })),
    sources,
    versions,
    ...(check === null ? {} : { check: checkJson(check) }),
    ...(design === null ? {} : { design }),
  };
}

function stateJson(state: FlaskState): object {
  const { added, colour, band, cloudiness } = state;
  return {
    ...state,
    added: addedText(added),
    colour: inWords(colour),
    band:
      band === null ? null : { ...band, lightest: inWords(band.lightest), darkest: inWords(band.darkest) },
    cloudiness: cloudText(cloudiness),
  };
}

function checkJson(check: ShowCheck): object {
  return { ...check, flasks: check.flasks.map((one) => ({ ...one, corrected: inWords(one.corrected) })) };
}

function inWords<Colour extends { readonly look: ColourLook }>({
  look,
  ...figures
}: Colour): Omit<Colour, "look"> & { readonly words: string } {
  return { ...figures, words: colourText(look) };
}
