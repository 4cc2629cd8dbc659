import { useRef, useState } from "react";
import type { MouseEvent, ReactElement } from "react";
import type { FlaskShow, SeenColours, ShowCheck } from "../../agronomy/index.ts";
import { colourText } from "../../report/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";

interface SeenProps {
  readonly show: FlaskShow;
  readonly check: ShowCheck | null;
  readonly onCompare: (seen: SeenColours) => void;
}

const WHITE = "white patch";
/** Widest a photograph is drawn [px]. */
const MOST_WIDTH = 900;
/** Half-width of the square whose mean colour is taken [px]. */
const PATCH = 4;

/** Colours as seen at the show: typed, or picked from a photograph that stays on this device. */
export function SeenPanel({ show, check, onCompare }: SeenProps): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const names = show.flasks.map(({ name }) => name);
  const [colours, setColours] = useState<Readonly<Record<string, string>>>({});
  const [target, setTarget] = useState(WHITE);
  const [hasPhoto, setHasPhoto] = useState(false);
  const canvas = useRef<HTMLCanvasElement>(null);
  const set = (name: string, hex: string): void => setColours((before) => ({ ...before, [name]: hex }));
  const draw = async (file: File): Promise<void> => {
    const picture = await createImageBitmap(file);
    const place = canvas.current;
    if (place === null) return;
    const scale = Math.min(1, MOST_WIDTH / picture.width);
    place.width = Math.round(picture.width * scale);
    place.height = Math.round(picture.height * scale);
    place.getContext("2d")?.drawImage(picture, 0, 0, place.width, place.height);
    setHasPhoto(true);
  };
  const pick = (event: MouseEvent<HTMLCanvasElement>): void => {
    const place = event.currentTarget;
    const box = place.getBoundingClientRect();
    const x = Math.round(((event.clientX - box.left) / box.width) * place.width);
    const y = Math.round(((event.clientY - box.top) / box.height) * place.height);
    const hex = meanColour(place, x, y);
    if (hex === null) return;
    set(target, hex);
    const order = [WHITE, ...names];
    setTarget(order[order.indexOf(target) + 1] ?? target);
  };
  const flasks = names.flatMap((flask) => {
    const hex = colours[flask];
    return hex === undefined ? [] : [{ flask, hex }];
  });
  return (
    <details className="seen-panel">
      <summary>{say("Check the show: colours as you see them")}</summary>
      <p>
        {say(
          "Choose a colour for each flask and for something white in the same light. Or take a photograph and click on each in turn. It stays on this device.",
        )}
      </p>
      <label>
        {say("Photograph")}{" "}
        <input
          type="file"
          accept="image/*"
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file !== undefined) void draw(file);
          }}
        />
      </label>
      <fieldset className="seen-colours">
        <legend>{say("Colours")}</legend>
        {[WHITE, ...names].map((name) => (
          <label key={name} className={hasPhoto && name === target ? "picking" : ""}>
            {hasPhoto && (
              <input
                type="radio"
                name="seen-target"
                aria-label={say("Pick {name} from the photograph next", { name: language.page(name) })}
                checked={name === target}
                onChange={() => setTarget(name)}
              />
            )}
            <input
              type="color"
              aria-label={say("Colour of {name}", { name: language.page(name) })}
              value={colours[name] ?? "#ffffff"}
              onChange={(event) => set(name, event.target.value)}
            />
            <span>
              {language.page(name)} {colours[name] ?? say("not given")}
            </span>
          </label>
        ))}
      </fieldset>
      <canvas ref={canvas} hidden={!hasPhoto} onClick={pick} className="seen-photo" />
      <button
        type="button"
        disabled={flasks.length === 0}
        onClick={() => onCompare({ white: colours[WHITE] ?? "#ffffff", flasks })}
      >
        {say("Compare with what was computed")}
      </button>
      {check !== null && <Verdict check={check} />}
    </details>
  );
}

/** Whether the show went as computed, flask by flask, and what would explain it where it did not. */
function Verdict({ check }: { check: ShowCheck }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <div role="status" data-testid="seen-verdict">
      <p>
        <strong>
          <Text of={check.verdict} />
        </strong>
      </p>
      <ul>
        {check.flasks.map(({ flask, corrected, deltaE00, asComputed }) => (
          <li key={flask}>
            {say("{flask}: {colour} after the white patch, ΔE00 {difference}, {verdict}", {
              flask: language.page(flask),
              colour: colourText(corrected.look, language),
              difference: deltaE00.toFixed(0),
              verdict: asComputed ? say("as computed") : say("not as computed"),
            })}
          </li>
        ))}
        {check.explanations.map(({ id, what, mend }) => (
          <li key={id}>
            <Text of={what} />: <Text of={mend} />
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Mean colour of a small square of a picture; null outside it. */
function meanColour(place: HTMLCanvasElement, x: number, y: number): string | null {
  const context = place.getContext("2d", { willReadFrequently: true });
  const left = Math.max(0, Math.min(place.width - 2 * PATCH - 1, x - PATCH));
  const top = Math.max(0, Math.min(place.height - 2 * PATCH - 1, y - PATCH));
  if (context === null || place.width <= 2 * PATCH || place.height <= 2 * PATCH) return null;
  const { data } = context.getImageData(left, top, 2 * PATCH + 1, 2 * PATCH + 1);
  const sums = [0, 0, 0];
  for (let i = 0; i < data.length; i += 4) for (let k = 0; k < 3; k += 1) sums[k]! += data[i + k]!;
  const two = (sum: number): string =>
    Math.round(sum / (data.length / 4))
      .toString(16)
      .padStart(2, "0");
  return `#${sums.map(two).join("")}`;
}
