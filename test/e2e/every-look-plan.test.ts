import { afterAll, beforeAll, expect, test } from "vitest";
import { violationsInBrightLight, violationsInEveryLook } from "./look.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";
import { PLAN_SCENES, sceneOf } from "./scenes.ts";

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
    const page = await sceneOf(stage, scene);
    expect(await violationsInEveryLook(page, scene.within)).toEqual([]);
    expect(await violationsInBrightLight(page, scene.within)).toEqual([]);
    await page.context().close();
  },
  300_000,
);
