import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";
import { PLAN_SCENES, violationsOfScene } from "./scenes.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

test.each(Object.entries(PLAN_SCENES))(
  "no rule of accessibility is broken in any look: %s",
  async (_name, scene) => {
    expect(await violationsOfScene(stage, scene)).toEqual([]);
  },
  300_000,
);
