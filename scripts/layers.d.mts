export interface Layer {
  readonly imports: readonly string[];
  readonly folders: readonly string[];
  readonly packages: readonly string[];
  readonly node: boolean;
  readonly pure: boolean;
}
export const layers: Readonly<Record<string, Layer>>;
export const layerNames: readonly string[];
